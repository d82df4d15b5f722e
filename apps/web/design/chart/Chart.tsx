import { useId, type ReactNode } from 'react';
import './chart.css';
import { t } from '../../words/t.js';

export type Axis = { from: number; to: number; ticks: readonly { at: number; words: string }[]; label: string };
export type Scales = { x: (value: number) => number; y: (value: number) => number };

const WIDTH = 530;
const HEIGHT = 250;
const AREA = { left: 48, right: 14, top: 14, bottom: 44 };

/** Where values lie in the picture; y grows upwards. */
export function scalesOf(x: Axis, y: Axis): Scales {
  const within = (axis: Axis, value: number) => (value - axis.from) / (axis.to - axis.from);
  return {
    x: (value) => round(AREA.left + within(x, value) * (WIDTH - AREA.left - AREA.right)),
    y: (value) => round(HEIGHT - AREA.bottom - within(y, value) * (HEIGHT - AREA.top - AREA.bottom)),
  };
}

const round = (pixels: number) => Math.round(pixels * 10) / 10;

/** A drawing in one ink with its axes. What it shows is said in words to whoever does not see it; its numbers stand in a table behind. */
export function Chart({ title, says, x, y, children, numbers }: { title: string; says: string; x: Axis; y: Axis; children: (at: Scales) => ReactNode; numbers: ReactNode }) {
  const id = useId();
  const at = scalesOf(x, y);
  return (
    <figure className="chart">
      <div className="scroll-x" tabIndex={0} role="group" aria-label={title}>
        <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={`${id}-title ${id}-says`}>
          <title id={`${id}-title`}>{title}</title>
          <desc id={`${id}-says`}>{says}</desc>
          <g className="axis">
            {y.ticks.map((tick) => (
              <g key={tick.at}>
                <path d={`M${AREA.left} ${at.y(tick.at)}H${WIDTH - AREA.right}`} />
                <text x={AREA.left - 8} y={at.y(tick.at) + 4} textAnchor="end">{tick.words}</text>
              </g>
            ))}
            {x.ticks.map((tick) => (
              <text key={tick.at} x={at.x(tick.at)} y={HEIGHT - AREA.bottom + 18} textAnchor="middle">{tick.words}</text>
            ))}
            <text x={AREA.left} y={HEIGHT - 6}>{x.label}</text>
          </g>
          {children(at)}
        </svg>
      </div>
      <details>
        <summary>{t('The numbers')}</summary>
        {numbers}
      </details>
    </figure>
  );
}

/** A step curve through points in order, from the first to the end of the axis. */
export function stepPath(points: readonly { x: number; y: number }[], endX: number): string {
  return points.map(({ x, y }, i) => (i === 0 ? `M${x} ${y}` : `H${x}V${y}`)).join('') + `H${endX}`;
}
