import { DOG_OUTLINE, layLine, type LineDog, type LineLayout } from '#libs/contracts/line-of-twenty';
import type { StandingView } from '#libs/contracts/standing';
import { useSay } from './speech.js';
import './line-of-twenty.css';

type Line = NonNullable<StandingView['line']>;

/** Twenty dogs of the breed; the filled ones are where this dog may stand. One row where there is room, two on a phone. */
export function LineOfTwenty({ line }: { line: Line }) {
  return (
    <div className="twenty" role="img" aria-label={line.described}>
      <Row line={line} layout={layLine(line, 20)} className="wide" />
      <Row line={line} layout={layLine(line, 10)} className="two-rows" />
    </div>
  );
}

function Row({ line, layout, className }: { line: Line; layout: LineLayout; className: string }) {
  const say = useSay();
  const { ends, unsentAt } = layout;
  return (
    <svg aria-hidden="true" className={className} viewBox={`-2 -4 ${layout.width + 4} ${layout.height + 6}`}>
      <text x={ends.lowX} y={16}>{line.low}</text>
      <text x={ends.highX} y={ends.highY === 0 ? 16 : ends.highY} textAnchor="end">{line.high}</text>
      {layout.dogs.map((dog, i) => <Dog key={i} dog={dog} />)}
      {unsentAt && <text x={unsentAt.x} y={unsentAt.y} textAnchor={unsentAt.anchor}>{say('X-rayed, not sent')}</text>}
    </svg>
  );
}

function Dog({ dog }: { dog: LineDog }) {
  return (
    <>
      <path className={dog.kind} d={DOG_OUTLINE} transform={`translate(${dog.x} ${dog.y}) scale(.9)`} vectorEffect="non-scaling-stroke" />
      {dog.label && <text className="num" x={dog.labelX} y={dog.labelY} textAnchor="middle">{dog.label}</text>}
    </>
  );
}
