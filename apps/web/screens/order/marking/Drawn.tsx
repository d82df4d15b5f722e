import type { MarksEvaluation } from '#libs/science/measurement/evaluate-marks';
import type { FittedCircle } from '#libs/science/measurement/fit-circle';
import type { Exposure } from './use-marks.js';

const SIDES = ['left', 'right'] as const;

/** Circles and the shift between their centres, drawn back into the picture's own pixels. */
export function Drawn({ found, picture }: { found: MarksEvaluation; picture: NonNullable<Exposure['picture']> }) {
  const { row, column } = found.unit === 'mm' && picture.spacing ? picture.spacing : { row: 1, column: 1 };
  const ellipse = (circle: FittedCircle | undefined, className: string, key: string) =>
    circle && <ellipse key={key} className={className} cx={circle.centre.x / column} cy={circle.centre.y / row} rx={circle.radius / column} ry={circle.radius / row} />;
  return (
    <g className="marked" aria-hidden="true">
      {SIDES.map((side) => {
        const [head, socket] = [found.heads[side], found.sockets[side]];
        return (
          <g key={side}>
            {ellipse(socket, 'marked-socket', 'socket')}
            {ellipse(head, 'marked-head', 'head')}
            {head && socket && <line x1={socket.centre.x / column} y1={socket.centre.y / row} x2={head.centre.x / column} y2={head.centre.y / row} />}
          </g>
        );
      })}
    </g>
  );
}
