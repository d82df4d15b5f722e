import { Link } from '@tanstack/react-router';
import { Fragment, type ReactNode } from 'react';
import { setAsideReading, type LeftReading } from '#libs/contracts/results-in';
import { Empty } from '../../design/Empty.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { momentAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';
import { useSetAside } from './queries.js';

/** Each waits until a person has seen to it. */
export function LeftSheet({ left, lead, children }: { left: LeftReading[]; lead: boolean; children: ReactNode }) {
  return (
    <Sheet title={t('Readings that led nowhere')}>
      {left.length === 0 ? (
        <Empty title={t('None waits')}>{t('A message from a centre that names no order, or a value that cannot be, is listed here. The centre was told the same.')}</Empty>
      ) : (
        <ul className="plain stack">
          {left.map((one) => (
            <li key={one.id}>
              <OneLeft one={one} lead={lead} />
            </li>
          ))}
        </ul>
      )}
      {children}
    </Sheet>
  );
}

function OneLeft({ one, lead }: { one: LeftReading; lead: boolean }) {
  const { zone } = useMe();
  const setAside = useSetAside(lead);
  const put = { ...setAside, mutate: (body: { why: string }, then: { onSuccess: () => void; onError: (error: unknown) => void }) => setAside.mutate({ reading: one.id, body }, then) };
  return (
    <article className="left-reading">
      <h3>
        {one.centre}, {momentAt(one.at, zone)}
      </h3>
      <p className="err"><b>{t.known(one.words)}</b></p>
      {one.order && (
        <p>
          {t('It named a package of this order:')}{' '}
          <Link to="/orders/$order" params={{ order: one.order.id }} className="num">{one.order.accession}</Link>
        </p>
      )}
      {one.said.length > 0 && (
        <details>
          <summary>{t('What came')}</summary>
          <dl className="facts">
            {one.said.map(({ what, words }, i) => (
              <Fragment key={`${what} ${i}`}>
                <dt>{what}</dt>
                <dd>{words}</dd>
              </Fragment>
            ))}
          </dl>
        </details>
      )}
      <AddForm opens={t('I have seen to it')} saves={t('Take it off the list')} schema={setAsideReading} add={put}>
        {(entry) => <TextField label={t('What was done')} {...entry.field('why')} autoComplete="off" help={t('Such as: the centre was asked, and sends it again.')} />}
      </AddForm>
    </article>
  );
}
