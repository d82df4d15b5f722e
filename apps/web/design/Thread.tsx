import type { Road } from '#libs/contracts/screens/order';
import { shape } from './thread-shape.js';
import { heard, wordsBeside } from './thread-words.js';

/** One visit as one line: a sentence for those who listen, a drawing for those who look. */
export function Thread({ road }: { road: Road }) {
  const said = wordsBeside(road);
  return (
    <div className="thread row">
      <span className="vh">
        {road.label}. {heard(road)}
      </span>
      <Knots road={road} from={1} />
      {said && (
        <span className={said.held ? 'say held' : 'say'} style={{ '--at': said.at } as React.CSSProperties} aria-hidden="true">
          {said.first && <b>{said.first}</b>} {said.rest}
        </span>
      )}
    </div>
  );
}

export function Knots({ road, from }: { road: Road; from: number }) {
  return shape(road).map((k, i) => (
    <i key={`${k.name}${i}`} aria-hidden="true" className={k.className} style={{ gridColumn: from + i }}>
      {k.endBar && <u />}
      {k.arc && <s />}
    </i>
  ));
}

/** Above a column of lines: the steps' names, once. */
export function StepNames({ names }: { names: readonly string[] }) {
  return (
    <div className="steps-head">
      {names.map((n) => (
        <span key={n}>{n}</span>
      ))}
      <span />
    </div>
  );
}
