import { FEWEST } from './group-size.js';

export interface YearPart<T> { from: number; to: number; dogs: T[] }

/**
 * Birth years joined, oldest first, until each part has enough dogs for a figure of its own. Every dog is in one part
 * and no part is hidden, so none can be had by taking the others from the whole. Empty where there are not two parts.
 */
export function yearParts<T extends { bornYear: number }>(dogs: readonly T[]): YearPart<T>[] {
  const parts: YearPart<T>[] = [];
  for (const year of [...new Set(dogs.map(({ bornYear }) => bornYear))].sort((a, b) => a - b)) {
    const born = dogs.filter(({ bornYear }) => bornYear === year);
    const open = parts.at(-1);
    if (open && open.dogs.length < FEWEST.forAPlace) Object.assign(open, { to: year, dogs: [...open.dogs, ...born] });
    else parts.push({ from: year, to: year, dogs: born });
  }
  const last = parts.at(-1);
  if (last && parts.length > 1 && last.dogs.length < FEWEST.forAPlace) {
    parts.pop();
    const before = parts.at(-1)!;
    Object.assign(before, { to: last.to, dogs: [...before.dogs, ...last.dogs] });
  }
  return parts.length > 1 ? parts : [];
}
