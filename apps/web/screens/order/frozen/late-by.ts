import type { PageSentence } from '#libs/words/de/staff/page-words';
import { t } from '../../../words/t.js';

const units: readonly [ms: number, words: PageSentence][] = [
  [86_400_000, '{count, plural, one {# day} other {# days}}'],
  [3_600_000, '{count, plural, one {# hour} other {# hours}}'],
  [60_000, '{count, plural, one {# minute} other {# minutes}}'],
];

/** "4 hours 10 minutes": from when it happened to when it was written down, in the two largest units. */
export function lateBy(at: string, rec: string): string {
  let rest = Math.max(0, Date.parse(rec) - Date.parse(at));
  const parts: string[] = [];
  for (const [ms, words] of units) {
    const count = Math.floor(rest / ms);
    rest -= count * ms;
    if (count > 0 && parts.length < 2) parts.push(t(words, { count }));
    else if (parts.length > 0) break;
  }
  return parts.join(' ') || t('less than a minute');
}
