import type { Birth } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import { existingDay, pastDay } from '../parse-input.js';
import { badInput } from '../refusal.js';

/** No dog alive was born before; a slip in the year is. */
const FIRST_YEAR = '1990';

/** A birth that can have been: in order, past, and for a known day one day. A month or year that is not over yet ends today. */
export function checkedBirth(birth: Birth, today: string): Birth {
  const earliest = pastDay('birth.earliest', birth.earliest, today);
  const latest = existingDay('birth.latest', birth.latest);
  if (latest < earliest) throw badInput('birth.latest', t('The latest day of birth, {latest}, lies before the earliest, {earliest}. Swap or correct them.', { latest, earliest }));
  if (birth.precision === 'day' && latest !== earliest) throw badInput('birth.latest', t('A birth known to the day has one day. Choose month, year or estimate, or write the same day twice.'));
  if (earliest.slice(0, 4) < FIRST_YEAR) throw badInput('birth.earliest', t('No dog lives that long. Look at the year {slice} again.', { slice: earliest.slice(0, 4) }));
  return { earliest, latest: latest > today ? today : latest, precision: birth.precision };
}
