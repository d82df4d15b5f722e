import { Chart } from '../../design/chart/Chart.js';
import { countTicks } from '../../design/chart/ticks.js';
import { Within, backWords, of100, shareAxis, shareColumns, type Share } from './shares.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';

/** Shares by size of unit, each with the limits of chance for its size. */
export function Funnel({ points, centre }: { points: Share[]; centre: number }) {
  const says = points.map(backWords).join('; ');
  return (
    <Chart
      title={t('Packages sent back of 100, by packages sent')}
      says={t('{parts}. All together {centre} of 100.', { parts: says, centre: of100(centre) })}
      x={{ ...countTicks(Math.max(...points.map((p) => p.of)) + 2), label: t('packages sent') }}
      y={shareAxis(points)}
      numbers={<Table caption={t('Packages sent back, by size of practice')} rows={points} rowKey={(_, i) => String(i)} columns={[{ head: t('Sent'), rowHead: true, cell: (p) => p.of }, ...shareColumns()]} />}
    >
      {(at) => (
        <>
          <path className="edge" d={`M${at.x(0)} ${at.y(100 * centre)}H516`} />
          {points.map((p, i) => <Within key={i} point={p} x={at.x(p.of)} y={at.y} />)}
        </>
      )}
    </Chart>
  );
}
