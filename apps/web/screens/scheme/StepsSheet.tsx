import { Link } from '@tanstack/react-router';
import { Fragment } from 'react';
import type { SchemeScreen } from '#libs/contracts/screens/board';
import { Empty } from '../../design/Empty.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { flows } from './study-steps.js';

export function StepsSheet({ screen }: { screen: SchemeScreen }) {
  const each = flows(screen.steps);
  return (
    <Sheet title={t('Where the studies stand')}>
      {each.length === 0 && <Empty title={t('No study yet')}>{t('As soon as a practice books the first dog, its studies are counted here.')}</Empty>}
      {each.map((flow) => (
        <div key={flow.protocol} className="flow">
          <h3>{flow.protocol}</h3>
          <ol>
            {flow.along.map((at) => (
              <li key={at.at}>
                <Link to="/scheme/studies" search={{ protocol: flow.code, step: at.at }}>
                  <b className="num">{at.count}</b> <span>{at.words}</span>
                </Link>
              </li>
            ))}
          </ol>
          {flow.beside.length > 0 && (
            <p className="small">
              {t('Beside the road:')}{' '}
              {flow.beside.map((s, i) => (
                <Fragment key={s.at}>
                  {i > 0 && (i === flow.beside.length - 1 ? ` ${t('and')} ` : ', ')}
                  <Link to="/scheme/studies" search={{ protocol: flow.code, step: s.at }}>{s.count} {s.words}</Link>
                </Fragment>
              ))}
              .
            </p>
          )}
        </div>
      ))}
      <p className="not-sent">
        {screen.imagedNotSent === 0 ? (
          t('Every study that was imaged has been sent.')
        ) : (
          <>
            <Link to="/scheme/studies" search={{ show: 'unsent' }}><b>{t('{count, plural, one {# study was} other {# studies were}} imaged and not sent.', { count: screen.imagedNotSent })}</b></Link>{' '}{t('Where films stay at home, the breed looks tighter than it is.')}
          </>
        )}
      </p>
    </Sheet>
  );
}
