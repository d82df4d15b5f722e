import { ageOn } from '#libs/science/age';

/** As people say it: in weeks while young, then in months, then in years and months. */
export function ageWords(born: string, day: string): string {
  const { days, months } = ageOn(born, day);
  if (months < 6) return `${Math.floor(days / 7)} weeks`;
  if (months < 36) return `${months} months`;
  const rest = months % 12;
  return `${Math.floor(months / 12)} years${rest ? `, ${rest} ${rest === 1 ? 'month' : 'months'}` : ''}`;
}
