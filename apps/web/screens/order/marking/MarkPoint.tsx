import { memo, useEffect, useRef, type KeyboardEvent } from 'react';
import type { Point } from '#libs/science/measurement/plane';
import type { Change } from './marks-draft.js';
import { t } from '../../../words/t.js';

type Props = { at: Point; slot: string; index: number; name: string; chosen: boolean; current: boolean; dot: number; change: (change: Change) => void };

/** One point: a cross under a place for a finger. Arrows move it by a pixel of the picture, with Shift by ten. */
export const MarkPoint = memo(function MarkPoint({ at, slot, index, name, chosen, current, dot, change }: Props) {
  const self = useRef<SVGGElement>(null);
  useEffect(() => {
    if (chosen) self.current?.focus({ preventScroll: true });
  }, [chosen]);
  const onKeyDown = (e: KeyboardEvent) => {
    if (e.key === 'Delete' || e.key === 'Backspace') {
      e.preventDefault();
      change({ do: 'remove' });
    }
    const by = e.shiftKey ? 10 : 1;
    const way = ({ ArrowLeft: [-by, 0], ArrowRight: [by, 0], ArrowUp: [0, -by], ArrowDown: [0, by] } as Record<string, [number, number]>)[e.key];
    if (!way) return;
    e.preventDefault();
    e.stopPropagation();
    change({ do: 'nudge', dx: way[0], dy: way[1] });
  };
  const choose = () => change({ do: 'choose', at: slot, point: index });
  return (
    <g
      ref={self}
      data-point={`${slot} ${index}`}
      className={`mark-point${chosen ? ' mark-chosen' : ''}${current ? '' : ' mark-beside'}`}
      transform={`translate(${at.x} ${at.y}) scale(${dot})`}
      role="button"
      tabIndex={0}
      aria-pressed={chosen}
      aria-label={t('{mark}, point {number}, at {x}, {y}', { mark: name, number: index + 1, x: at.x.toFixed(0), y: at.y.toFixed(0) })}
      onPointerDown={choose}
      onFocus={() => !chosen && choose()}
      onKeyDown={onKeyDown}
    >
      <circle r="11" className="mark-hit" />
      <path d="M-8 0H-2.5M2.5 0H8M0 -8V-2.5M0 2.5V8" className="mark-under" />
      <path d="M-8 0H-2.5M2.5 0H8M0 -8V-2.5M0 2.5V8" />
    </g>
  );
});
