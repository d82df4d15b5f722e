import type { Road } from '#libs/contracts/screens/order';

export type Knot = Road['knots'][number];
/** What is said beside the line, and at which knot. */
export type Said = { at: number; first: string; rest: string; held: boolean };

const index = (road: Road, ...states: Knot['state'][]) => road.knots.findIndex((k) => states.includes(k.state));

export function wordsBeside(road: Road): Said | null {
  const last = road.knots.length - 1;
  if (road.ended) return { at: at(index(road, 'ended'), 0), first: '', rest: road.ended, held: false };
  const waiting = index(road, 'held', 'here', 'toCome');
  if (road.hold) return { at: at(waiting, last), first: road.hold.title, rest: road.hold.rest, held: true };
  if (road.over) return said(road, last, '');
  const here = index(road, 'here');
  if (here >= 0) return said(road, here, sentence(road.knots[here]?.name ?? ''));
  return said(road, at(waiting, last), '');
}

const at = (found: number, otherwise: number) => (found >= 0 ? found : otherwise);
const sentence = (words: string) => (/[.!?]$/.test(words) ? words : `${words}.`);
function said(road: Road, knot: number, first: string): Said | null {
  const note = road.knots[knot]?.note ?? '';
  return first || note ? { at: knot, first, rest: note, held: false } : null;
}

/** Everything a screen reader hears of the line: one sentence, and the words of the hold. */
export function heard(road: Road): string {
  const hold = road.hold && !road.sentence.includes(road.hold.title) ? ` ${road.hold.title} ${road.hold.rest}` : '';
  return `${road.sentence}${hold}`;
}
