import type { Road } from '#libs/contracts/screens/order';
import { capital, dayAt, sentence } from './format.js';

export type Knot = Road['knots'][number];
/** What is said beside the line, and at which knot. */
export type Said = { at: number; first: string; rest: string; held: boolean };

const index = (road: Road, ...states: Knot['state'][]) => road.knots.findIndex((k) => states.includes(k.state));

export function wordsBeside(road: Road): Said | null {
  const last = road.knots.length - 1;
  if (road.ended) return { at: at(index(road, 'ended'), 0), first: '', rest: road.ended, held: false };
  const waiting = index(road, 'held', 'here', 'toCome');
  if (road.hold) return { at: at(waiting, last), first: sentence(road.hold.title), rest: road.hold.rest, held: true };
  if (road.over) return said(road, last, '');
  const here = index(road, 'here');
  if (here >= 0) return said(road, here, sentence(road.knots[here]?.name ?? ''));
  return said(road, at(waiting, last), '');
}

const at = (found: number, otherwise: number) => (found >= 0 ? found : otherwise);
function said(road: Road, knot: number, first: string): Said | null {
  const note = road.knots[knot]?.note ?? '';
  return first || note ? { at: knot, first, rest: capital(note), held: false } : null;
}

/** Everything a screen reader hears of the line: one sentence, and the words of the hold. */
export function heard(road: Road): string {
  const hold = road.hold && !road.sentence.includes(road.hold.title) ? ` ${sentence(road.hold.title)} ${road.hold.rest}` : '';
  return `${road.sentence}${hold}`;
}

/** The day that a visit's times are told of: the one it was sedated on, or the last thing that happened in it. */
export function dayOfLine(road: Road, zone: string): string | undefined {
  if (road.from !== null) return undefined;
  const times = road.knots.flatMap((k) => (k.at && /T/.test(k.at) ? [k.at] : []));
  const last = times.length > 2 ? times.at(-1) : undefined;
  return last && dayAt(last, zone);
}
