import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';

const soon = 45;
const daysFrom = (a: string, b: string) => Math.round((Date.parse(b) - Date.parse(a)) / 86_400_000);

/** Whether something dated still holds today, in words; `asks` when a person has to see to it. */
export function validity(until: string, today: string): { words: string; asks: boolean } {
  const left = daysFrom(today, until);
  if (left < 0) return { words: t('ran out on {day}', { day: fullDay(until) }), asks: true };
  if (left === 0) return { words: t('runs out today'), asks: true };
  if (left <= soon) return { words: t('until {day}, {left, plural, one {one day} other {# days}} more', { day: fullDay(until), left }), asks: false };
  return { words: t('until {day}', { day: fullDay(until) }), asks: false };
}
