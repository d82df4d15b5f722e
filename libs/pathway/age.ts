import { addDays, addMonths } from './days.js';
import type { Birth } from './facts.js';
import type { ProtocolRules } from './rules.js';

/** The latest day on which the dog may have been born: the one that counts for its age. */
export function latestBirthDay(birth: Birth): string {
  if (birth.latest !== undefined) return birth.latest;
  switch (birth.precision) {
    case 'day': return birth.date;
    case 'month': return addDays(addMonths(`${birth.date.slice(0, 7)}-01`, 1), -1);
    case 'year': return `${birth.date.slice(0, 4)}-12-31`;
    // An estimate without a latest day is taken to be half a year off at most.
    case 'estimate': return addMonths(birth.date, 6);
  }
}

export function oldEnoughFrom(birth: Birth, youngest: ProtocolRules['youngest']): string {
  const born = latestBirthDay(birth);
  return 'days' in youngest ? addDays(born, youngest.days) : addMonths(born, youngest.months);
}
