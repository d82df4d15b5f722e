import { Link } from '@tanstack/react-router';
import type { BoardRow } from '#libs/contracts/screens/board';
import { Thread } from '../../design/Thread.js';
import { hasRole, useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';

export function VisitRow({ row }: { row: BoardRow }) {
  const me = useMe();
  const images = row.step === 'sedated' && (hasRole(me, 'radiographer') || hasRole(me, 'vet'));
  return (
    <tr className={[row.over && 'gone', row.waitsForMe && 'mine'].filter(Boolean).join(' ')}>
      <td className="num">
        <span className="time">{row.start}</span> {!row.over && <span className="label nowrap">{row.room}</span>}
        {row.waitsForMe && <span className="vh">{t('Waits for you.')}</span>}
      </td>
      <td>
        <Link to="/orders/$order" params={{ order: row.order }} className="dog">
          {row.dog}
        </Link>{' '}
        {images && (
          <Link to="/orders/$order/imaging" params={{ order: row.order }} className="small nowrap">
            {t('Imaging screen')}
          </Link>
        )}
        {!row.over && <br />}
        <span className="label">{row.over ? row.owner : `${row.breed} · ${row.owner}`}</span>
      </td>
      <td className="studies label">{row.studies.join(' · ')}</td>
      <td className="th-cell">
        <Thread road={row.road} />
      </td>
    </tr>
  );
}
