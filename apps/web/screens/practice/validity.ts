import { fullDay } from '../../design/format.js';

const soon = 45;
const daysFrom = (a: string, b: string) => Math.round((Date.parse(b) - Date.parse(a)) / 86_400_000);

/** Whether something dated still holds today, in words; `asks` when a person has to see to it. */
export function validity(until: string, today: string): { words: string; asks: boolean } {
  const left = daysFrom(today, until);
  if (left < 0) return { words: `ran out on ${fullDay(until)}`, asks: true };
  if (left === 0) return { words: 'runs out today', asks: true };
  if (left <= soon) return { words: `until ${fullDay(until)}, ${left === 1 ? 'one day' : `${left} days`} more`, asks: false };
  return { words: `until ${fullDay(until)}`, asks: false };
}
