import { Chart, scalesOf, stepPath, type Axis } from '../../design/chart/Chart.js';
import { niceTicks } from '../../design/chart/ticks.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';
import { written, type Values } from './figures.js';
import { fixed } from '../../design/format.js';

const sharesAxis = (): Axis => ({ from: 0, to: 1, label: t('share'), ticks: [0, 0.25, 0.5, 0.75, 1].map((at) => ({ at, words: fixed(at, 2) })) });

/** For geneticists: the share of dogs at or below each value, with its interval as a band. */
export function CurveChart({ values, n }: { values: Values; n: number }) {
  const { curve, name } = values;
  const [first, last] = [curve[0]!, curve.at(-1)!];
  const x = niceTicks(first.value, last.value, values.decimals, `${name}${values.unit && `, ${values.unit}`}`);
  const middle = curve.find((point) => point.share >= 0.5)!;
  const says = t('A rising step curve of {n} dogs from {first} to {last}. Half of the dogs lie at or below {middle}. The band around it holds each point of the curve with 95 % certainty.', { n, first: written(first.value, values), last: written(last.value, values), middle: written(middle.value, values) });
  const shares = sharesAxis();
  const at = scalesOf(x, shares);
  const line = (of: 'share' | 'lower' | 'upper') => [{ x: at.x(x.from), y: at.y(0) }, ...curve.map((point) => ({ x: at.x(point.value), y: at.y(point[of]) }))];
  return (
    <Chart title={t('Share of dogs at or below each {value}', { value: name })} says={says} x={x} y={shares} numbers={<Numbers values={values} />}>
      {() => (
        <>
          <path className="band" d={bandOf(line('upper'), line('lower'), at.x(x.to))} />
          <path className="line" d={stepPath(line('share'), at.x(x.to))} />
        </>
      )}
    </Chart>
  );
}

type Points = { x: number; y: number }[];

/** Forward along the upper steps and back along the lower ones. */
function bandOf(upper: Points, lower: Points, endX: number): string {
  const back = lower.map((point, i) => ({ point, next: lower[i + 1]?.x ?? endX })).reverse();
  return `${stepPath(upper, endX)}${back.map(({ point, next }) => `L${next} ${point.y}H${point.x}`).join('')}Z`;
}

function Numbers({ values }: { values: Values }) {
  return (
    <Table
      caption={t('The curve in numbers')}
      rows={values.curve}
      rowKey={(point) => String(point.value)}
      columns={[
        { head: values.name, rowHead: true, cell: (point) => written(point.value, values) },
        { head: t('Share at or below'), right: true, cell: (point) => fixed(point.share, 3) },
        { head: t('Interval'), right: true, cell: (point) => t('{lower} to {upper}', { lower: fixed(point.lower, 3), upper: fixed(point.upper, 3) }) },
      ]}
    />
  );
}
