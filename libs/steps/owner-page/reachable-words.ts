import type { PracticeRules } from '#libs/pathway/rules';

const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** When letters come, as an owner reads it: not at night, and not before a day when nobody can be asked. */
export function reachableWords({ quiet, reachable }: Pick<PracticeRules, 'quiet' | 'reachable'>): string {
  const hours = quiet.from === quiet.to ? '' : `between ${quiet.to} and ${quiet.from} o’clock`;
  const missing = DAYS.filter((_, i) => reachable && !reachable.weekdays.includes(i + 1));
  const before = missing.length > 0 ? `, and not just before or on a ${missing.join(' or ')}` : '';
  return hours === '' && before === '' ? 'at any time' : `${hours || 'at any hour'}${before}${reachable?.closed.length ? ', or a day when the practice is closed' : ''}`;
}
