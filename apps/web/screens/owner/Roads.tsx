import type { OwnerPage } from '#libs/contracts/screens/owner';
import { longDay } from '../../design/format.js';
import { pronouns } from './pronouns.js';

const drawn = { done: '', here: 'now', toCome: 'to' } as const;
const heard = { done: 'done', here: 'now', toCome: 'to come' } as const;
const written: Record<string, string> = { here: 'Here, weighed, examined', asleep: 'Asleep', pictures: 'Pictures taken', awake: 'Awake again', home: 'Home' };

/** The visit as the owner knows it, hanging: five knots, and before them what we wait for. */
export function Roads({ page }: { page: OwnerPage }) {
  const waits = page.toDo.length > 0;
  const begun = page.knots.some((k) => k.state !== 'toCome');
  const before = waits && !begun;
  const { hers } = pronouns(page.dog.sex);
  if (!begun && !page.visit) return null;
  return (
    <ol className="hang" aria-label={`How far ${hers} visit is`}>
      {!begun && (
        <li className={before ? 'pre' : 'bnext'}>
          Booked {page.visit && <span className="by">for {longDay(page.visit.day)}, {page.visit.start}</span>}
        </li>
      )}
      {before && (
        <li className="hold">
          <span className="held-words">
            <b>Your answers.</b> {page.toDo.length === 1 ? 'One thing is' : `${page.toDo.length} things are`} asked of you, below.
          </span>
        </li>
      )}
      {page.knots.map((knot) => (
        <li key={knot.name} className={drawn[knot.state]} aria-current={knot.state === 'here' ? 'step' : undefined}>
          {written[knot.name] ?? knot.name}
          <span className="vh">, {heard[knot.state]}</span>
        </li>
      ))}
    </ol>
  );
}
