import { useId } from 'react';
import { fixed, timeAt } from '../../design/format.js';
import { t } from '../../words/t.js';
import type { Measure, Point } from './measures.js';

const WIDTH = 240;
const HEIGHT = 86;
const AREA = { left: 10, right: 46, top: 18, bottom: 22 };

/** One measure from the beginning to now, in one ink; dashed points wait on this tablet. No limits and no colours: what a value means is the vet's to say. */
export function SmallChart({ measure, points, zone }: { measure: Measure; points: readonly Point[]; zone: string }) {
  const id = useId();
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return null;
  const written = (value: number) => fixed(value, measure.decimals);
  const values = points.map((p) => p.value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const [from, to] = [Date.parse(first.at), Date.parse(last.at)];
  const x = (at: string) => AREA.left + (to === from ? 0.5 : (Date.parse(at) - from) / (to - from)) * (WIDTH - AREA.left - AREA.right);
  const y = (value: number) => HEIGHT - AREA.bottom - (high === low ? 0.5 : (value - low) / (high - low)) * (HEIGHT - AREA.top - AREA.bottom);
  const says = t('{count, plural, one {One value} other {# values}}, first {first}, last {last}, between {low} and {high}.', { count: points.length, first: written(first.value), last: written(last.value), low: written(low), high: written(high) });
  return (
    <figure className="small-chart">
      <figcaption>
        <b>{t(measure.label)}</b> <span className="label">{t(measure.unit)}</span>
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={`${id}-says`}>
        <title id={`${id}-says`}>{`${t(measure.label)}: ${says}`}</title>
        <path className="line" d={points.map((p, i) => `${i === 0 ? 'M' : 'L'}${x(p.at).toFixed(1)} ${y(p.value).toFixed(1)}`).join('')} />
        {points.map((p) => (
          <circle key={p.at} cx={x(p.at)} cy={y(p.value)} r={4.5} className={p.waits ? 'waits' : undefined} />
        ))}
        {points.length > 1 && <text x={x(first.at)} y={y(first.value) - 8}>{written(first.value)}</text>}
        <text className="last" x={x(last.at) + 9} y={y(last.value) + 5}>{written(last.value)}</text>
        <text x={AREA.left - 4} y={HEIGHT - 4}>{timeAt(first.at, zone)}</text>
        {points.length > 1 && <text x={WIDTH - AREA.right} y={HEIGHT - 4} textAnchor="middle">{timeAt(last.at, zone)}</text>}
      </svg>
    </figure>
  );
}
