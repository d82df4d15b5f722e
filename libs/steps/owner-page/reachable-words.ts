import type { PracticeRules } from '#libs/pathway/rules';
import type { Words } from '#libs/words/words';

const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

/** When letters come, as an owner reads it: not at night, and not before a day when nobody can be asked. Null where they come at any time. */
export function reachableWords({ quiet, reachable }: Pick<PracticeRules, 'quiet' | 'reachable'>, t: Words): string | null {
  const hours = quiet.from === quiet.to ? '' : t('between {from} and {to} o’clock', { from: quiet.to, to: quiet.from });
  const missing = DAYS.filter((_, i) => reachable && !reachable.weekdays.includes(i + 1)).map((day) => t(day));
  const before = missing.length > 0 ? t(', and not just before or on a {days}', { days: missing.join(t(' or ')) }) : '';
  if (hours === '' && before === '') return null;
  return `${hours || t('at any hour')}${before}${reachable?.closed.length ? t(', or a day when the practice is closed') : ''}`;
}
