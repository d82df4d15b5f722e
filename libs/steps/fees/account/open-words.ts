import { t } from '#libs/words/spoken';
import { spokenMoney } from '../money-words.js';

/** What is open, in words. */
export function openWords(chargedMinor: number, paidMinor: number, currency: string): string {
  const open = chargedMinor - paidMinor;
  if (chargedMinor === 0 && paidMinor === 0) return t('Nothing is charged yet.');
  if (chargedMinor === 0 && paidMinor > 0) return t('{paidMinor} was paid beforehand; nothing is charged yet.', { paidMinor: spokenMoney(paidMinor, currency) });
  if (open > 0) return t('{open} is open.', { open: spokenMoney(open, currency) });
  if (open < 0) return t('{moneyWords} more was paid than charged. Give it back, or charge what is missing.', { moneyWords: spokenMoney(-open, currency) });
  return t('All that was charged is paid.');
}
