import { useNavigate, useSearch } from '@tanstack/react-router';
import { Fragment } from 'react';
import { assignImage, setAsideImage, type Unmatched, type UnmatchedImage } from '#libs/contracts/gateway';
import { useAssignImage, useSetAside, useUnmatched } from '../../api/unmatched.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { momentAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';
import { PerformedList } from './PerformedList.js';
import './unmatched.css';

/** Images from the X-ray machines that fit no order: a person says whose each one is. */
export function UnmatchedScreen() {
  const { page = 1 } = useSearch({ from: '/inside/unmatched' });
  const navigate = useNavigate({ from: '/unmatched' });
  const { data, error } = useUnmatched(page);
  return (
    <>
      <div className="head">
        <h1>{t('Images without an order')}</h1>
        <p>{t('They came from an X-ray machine, and their numbers lead to no order here. Nothing is lost: each waits until somebody has looked.')}</p>
        <div className="acts">
          <CsvLink path="/unmatched.csv" />
        </div>
      </div>
      <ErrorBar error={error} />
      {!data ? (
        !error && <Loading what={t('the images')} />
      ) : data.rows.length === 0 ? (
        <div className="sheet">
          <Empty title={t('No image waits')}>{t('An image that fits no order is listed here.')}</Empty>
        </div>
      ) : (
        <ul className="plain stack">
          {data.rows.map((row) => (
            <li key={row.id}>
              <OneImage row={row} orders={data.orders} />
            </li>
          ))}
        </ul>
      )}
      <PerformedList rows={data?.performed ?? []} />
      <Pager page={page} more={data?.more ?? false} onPage={(to) => void navigate({ search: to > 1 ? { page: to } : {} })} />
    </>
  );
}

function OneImage({ row, orders }: { row: UnmatchedImage; orders: Unmatched['orders'] }) {
  const zone = useMe().zone;
  const assign = useAssignImage();
  const setAside = useSetAside();
  const forImage = <B,>(mutation: { mutate: (v: { image: string; body: B }, then: { onSuccess: () => void; onError: (e: unknown) => void }) => void; error: unknown; isPending: boolean }) => ({
    ...mutation, mutate: (body: B, then: { onSuccess: () => void; onError: (e: unknown) => void }) => mutation.mutate({ image: row.id, body }, then),
  });
  return (
    <Sheet title={t('From {from}', { from: row.from })} beside={momentAt(row.at, zone)} className="unmatched">
      <div className="unmatched-image">
        {row.previewable ? <img src={`/api/unmatched/${row.id}/preview`} alt={t('The image from {from}, {at}', { from: row.from, at: momentAt(row.at, zone) })} /> : <p className="quiet">{t('No picture of it can be shown here yet. It is kept whole.')}</p>}
        <div>
          <p>{t('{why} It says of itself:', { why: row.why })}</p>
          <dl className="facts">
            {row.said.map(({ what, words }) => (
              <Fragment key={what}>
                <dt>{what}</dt>
                <dd>{words}</dd>
              </Fragment>
            ))}
            {row.imageDay && (
              <>
                <dt>{t('Taken')}</dt>
                <dd>{row.imageDay}</dd>
              </>
            )}
          </dl>
          {row.said.length === 0 && <p className="quiet">{t('Nothing that names a dog.')}</p>}
          <AddForm opens={t('Say whose it is')} saves={t('Put it into this order')} schema={assignImage} add={forImage(assign)}>
            {(entry) => <Select label={t('Order')} options={orders} {...entry.field('order')} />}
          </AddForm>
          <AddForm opens={t('It belongs to no order')} saves={t('Set it aside')} schema={setAsideImage} add={forImage(setAside)}>
            {(entry) => <TextField label={t('Why')} {...entry.field('why')} autoComplete="off" />}
          </AddForm>
        </div>
      </div>
    </Sheet>
  );
}
