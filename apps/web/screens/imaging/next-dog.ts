import type { BoardRow, DayBoard } from '#libs/contracts/screens/board';

const AHEAD = ['booked', 'admitted', 'sedated'];

/** The next visit of this person's own day that has still to be imaged: later than this one, else the first. */
export function nextDog(board: DayBoard | undefined, me: string, order: string): BoardRow | undefined {
  const mine = (board?.rows ?? []).filter((r) => r.staff.includes(me) && (AHEAD.includes(r.step) || r.order === order));
  const at = mine.findIndex((r) => r.order === order);
  return [...mine.slice(at + 1), ...mine.slice(0, Math.max(0, at))].find((r) => r.order !== order);
}
