import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';

type Row = { what: string; more: string; from: string; until: string | null };

export function DatedList({ rows }: { rows: readonly Row[] }) {
  return (
    <ul className="stack small">
      {rows.map((r, i) => (
        <li key={i}>
          <b className="num">{r.what}</b> {r.more}
          <div className="quiet">
            {t('from {from}', { from: fullDay(r.from) })}
            {r.until && ` ${t('to {until}', { until: fullDay(r.until) })}`}
          </div>
        </li>
      ))}
    </ul>
  );
}
