import type { Road, ThreadScreen } from '#libs/contracts/screens/order';
import { knotMoment } from './format.js';
import { HangingThread } from './HangingThread.js';
import { Knots } from './Thread.js';
import { dayOfLine, heard, wordsBeside } from './thread-words.js';

/** An order's whole thread: each visit a line, each study leaving it where the films were taken. */
export function Strands({ thread, zone }: { thread: ThreadScreen; zone: string }) {
  const fork = forkColumn(thread.visits);
  const roads = [...thread.visits.map((v) => v.knots.length), ...thread.studies.map((s) => fork + s.knots.length)];
  const columns = Math.max(12, ...roads.map((n) => n + 1));
  return (
    <>
      {[...thread.visits, ...thread.studies].map((r) => (
        <p key={r.id} className="vh">
          {r.label}, {r.sub}. {heard(r)}
        </p>
      ))}
      <div className="strands" style={{ gridTemplateColumns: `9.5rem repeat(${columns}, minmax(0, 1fr))` }} aria-hidden="true">
        {thread.visits.map((v) => {
          const studies = thread.studies.filter((s) => s.from === v.id);
          return (
            <div key={v.id} className="strand-group">
              <Strand road={v} zone={zone} from={1} columns={columns} stem={studies.length > 0 && !cutOff(v, fork) ? { column: fork, ahead: aheadOf(v, fork) } : null} />
              {studies.map((s, i) => (
                <Strand key={s.id} road={s} zone={zone} from={fork + 1} columns={columns} {...(!cutOff(v, fork) && { fork: { column: fork, through: i < studies.length - 1, ahead: aheadOf(v, fork) } })} />
              ))}
            </div>
          );
        })}
        {thread.studies
          .filter((s) => !thread.visits.some((v) => v.id === s.from))
          .map((s) => (
            <Strand key={s.id} road={s} zone={zone} from={fork + 1} columns={columns} />
          ))}
      </div>
      <HangingThread thread={thread} zone={zone} />
    </>
  );
}

/** Studies leave a visit at "imaged". */
function forkColumn(visits: readonly Road[]): number {
  const found = visits[0]?.knots.findIndex((k) => k.step === 'imaged') ?? -1;
  return found >= 0 ? found + 1 : 5;
}

type StrandProps = { road: Road; zone: string; from: number; columns: number; stem?: { column: number; ahead: boolean } | null; fork?: { column: number; through: boolean; ahead: boolean } };

/** The words of a hold stand where the fork would be, so the studies below stand by themselves. */
const cutOff = (visit: Road, fork: number) => visit.hold !== null && visit.knots.findIndex((k) => k.state === 'held') < fork;

/** Nobody has been to the fork yet: the road that leaves there is still to come. */
const aheadOf = (visit: Road, fork: number) => ['toCome', 'held', undefined].includes(visit.knots[fork - 1]?.state);

function Strand({ road, zone, from, columns, stem, fork }: StrandProps) {
  const lineDay = dayOfLine(road, zone);
  const said = wordsBeside(road);
  const saidColumn = said ? from + said.at : 0;
  const beside = said !== null && (said.held || road.ended !== null) && columns - saidColumn >= 3;
  const shown = beside ? { ...road, knots: road.knots.slice(0, said.at + 1) } : road;
  return (
    <div className="strand">
      <h3>
        {road.label}
        <small>{road.sub}</small>
      </h3>
      <div className="thread">
        {fork && <div className={['fork', fork.through && 'through', fork.ahead && 'ahead'].filter(Boolean).join(' ')} style={{ gridColumn: fork.column }} />}
        <Knots road={shown} from={from} />
        {shown.knots.map((k, i) =>
          beside && i === said.at ? null : (
            <p key={`${k.name}${i}`} style={{ gridColumn: from + i }} className={[k.state === 'toCome' && 'to-come', stem?.column === from + i && 'beside-stem'].filter(Boolean).join(' ')}>
              <b>{k.name}</b>
              {[k.at && knotMoment(k.at, zone, lineDay), k.note].filter(Boolean).join(', ')}
            </p>
          ),
        )}
        {beside && (
          <span className={said.held ? 'say held beside-knot' : 'say beside-knot'} style={{ '--at': saidColumn - 1 } as React.CSSProperties}>
            {said.first && <b>{said.first}</b>} {said.rest}
          </span>
        )}
        {!beside && said?.held && (
          <span className="say held below" style={{ gridColumn: `${Math.min(saidColumn, columns - 4)} / -1` }}>
            <b>{said.first}</b> {said.rest}
          </span>
        )}
        {stem && <div className={stem.ahead ? 'stem ahead' : 'stem'} style={{ gridColumn: stem.column }} />}
      </div>
    </div>
  );
}
