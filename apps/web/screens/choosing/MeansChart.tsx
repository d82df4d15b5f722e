import type { Choosing } from '#libs/contracts/choosing';
import { Chart, type Axis, type Scales } from '../../design/chart/Chart.js';
import { niceTicks } from '../../design/chart/ticks.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';
import { capital, fixed } from '../../design/format.js';

type Row = Choosing['rows'][number];

/** The means of the generations to come: an open fan between the lowest and the highest published heritability. */
export function MeansChart({ found, written }: { found: Choosing; written: (value: number) => string }) {
  const { rows, mean, measure } = found;
  const [lowest, highest] = [rows[0]!, rows.at(-1)!];
  const most = Math.max(...rows.map(({ means }) => means.length));
  if (most === 0) return <p>{t('The reckoning ends at once: so small a share would take the mean below what there can be. Choose more.')}</p>;
  const all = [mean, ...rows.flatMap(({ means }) => means)];
  const x: Axis = { from: 0, to: most + 0.6, label: t('generations'), ticks: Array.from({ length: most + 1 }, (_, i) => ({ at: i, words: i === 0 ? t('now') : String(i) })) };
  const spread = Math.max(Math.max(...all) - Math.min(...all), 10 ** -found.decimals);
  const y: Axis = niceTicks(Math.min(...all) - spread / 6, Math.max(...all) + spread / 6, found.decimals, measure);
  const says = t('{measure} now {mean}. {parts}.', { measure: capital(measure), mean: written(mean), parts: [lowest, highest].map((row) => t('With a heritability of {heritability, number}: {means}', { heritability: row.heritability, means: row.means.map(written).join(`, ${t('then')} `) })).join('. ') });
  return (
    <Chart title={t('Mean {measure} of the generations to come', { measure })} says={says} x={x} y={y} numbers={<Numbers rows={rows} most={most} written={written} />}>
      {(at) => (
        <>
          <path className="band" d={`${pathOf(lowest, mean, at)}${back(highest, mean, at)}Z`} />
          {[lowest, highest].map((row) => (
            <g key={row.heritability}>
              <path className="edge" d={pathOf(row, mean, at)} />
              {row.means.map((value, i) => <circle key={i} className="dot" cx={at.x(i + 1)} cy={at.y(value)} r={3.5} />)}
              <text className="words" x={at.x(row.means.length) + 10} y={at.y(row.means.at(-1) ?? mean) + 4}>{t('h² {heritability, number}', { heritability: row.heritability })}</text>
            </g>
          ))}
          <circle className="dot" cx={at.x(0)} cy={at.y(mean)} r={5} />
        </>
      )}
    </Chart>
  );
}

const pointsOf = (row: Row, mean: number, at: Scales) => [mean, ...row.means].map((value, i) => `${at.x(i)} ${at.y(value)}`);
const pathOf = (row: Row, mean: number, at: Scales) => `M${pointsOf(row, mean, at).join('L')}`;
const back = (row: Row, mean: number, at: Scales) => `L${pointsOf(row, mean, at).reverse().join('L')}`;

function Numbers({ rows, most, written }: { rows: Row[]; most: number; written: (value: number) => string }) {
  return (
    <Table
      caption={t('Mean after each generation, by published heritability')}
      rows={rows}
      rowKey={(row, i) => `${row.population}-${i}`}
      columns={[
        { head: t('Measured in'), rowHead: true, cell: (row) => <>{row.population}<br /><span className="label">{row.source}</span></> },
        { head: t('Heritability'), right: true, cell: (row) => <>{fixed(row.heritability, 2)}{row.standardError !== null && <><br /><span className="label">± {fixed(row.standardError, 2)}</span></>}</> },
        ...Array.from({ length: most }, (_, i) => ({ head: t('Generation {number}', { number: i + 1 }), right: true, cell: (row: Row) => (row.means[i] === undefined ? t('ends before') : written(row.means[i])) })),
      ]}
    />
  );
}
