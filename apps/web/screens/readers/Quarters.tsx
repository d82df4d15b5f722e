import type { SchemeTimes } from '#libs/contracts/readers';
import { Chart, type Axis } from '../../design/chart/Chart.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';
import { Within, backWords, of100, shareAxis, shareColumns } from './shares.js';

type Quarter = NonNullable<SchemeTimes['returned']>['quarters'][number];

/** Shares over time, each with the limits of chance for its size. */
export function Quarters({ points, centre }: { points: Quarter[]; centre: number }) {
  const every = Math.ceil(points.length / 6);
  const x: Axis = { from: -0.5, to: points.length - 0.5, label: t('quarter of sending'), ticks: points.flatMap((p, i) => (i % every === 0 ? [{ at: i, words: p.quarter }] : [])) };
  const says = points.map((p) => `${p.quarter}: ${backWords(p)}`).join('; ');
  return (
    <Chart
      title={t('Packages sent back of 100, by quarter of sending')}
      says={t('{parts}. All together {centre} of 100.', { parts: says, centre: of100(centre) })}
      x={x}
      y={shareAxis(points)}
      numbers={<Table caption={t('Packages sent back, by quarter')} rows={points} rowKey={(q) => q.quarter} columns={[{ head: t('Quarter'), rowHead: true, cell: (q) => q.quarter }, { head: t('Sent'), right: true, cell: (q) => q.of }, ...shareColumns()]} />}
    >
      {(at) => (
        <>
          <path className="edge" d={`M48 ${at.y(100 * centre)}H516`} />
          {points.map((p, i) => <Within key={p.quarter} point={p} x={at.x(i)} y={at.y} />)}
        </>
      )}
    </Chart>
  );
}
