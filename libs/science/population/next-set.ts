import { FEWEST } from './group-size.js';

/** A dog and the reading by which it counts. */
export interface Member { dog: string; reading: string }

export type NextSet<M extends Member> =
  | { kind: 'frozen'; members: M[]; added: number; removed: number; satOut: number }
  /** Nothing new may be shown: too few dogs, or too few of them differ from the set before. */
  | { kind: 'waits'; why: 'tooFew' | 'unchanged' | 'tooFewChanged' };

/**
 * Which dogs make the next frozen set of a breed, such that nobody who holds two sets that follow one another learns
 * one dog's value from their difference: 5 or more dogs are new, or none; 5 or more have left, or none. Newcomers
 * wait until there are five of them. Where one to four have left, so many others sit this set out that five have; a
 * dog whose reading was amended has left with the old one and come with the new.
 * Our own rule, on the frequency threshold of `group-size`.
 * @param now every dog that counts today
 * @param before the members of the set in force, with their readings of then; undefined where there is none
 * @param lot a number for each dog that nobody can choose, for who sits out
 */
export function nextSet<M extends Member>(now: readonly M[], before: readonly Member[] | undefined, lot: (dog: string) => string): NextSet<M> {
  if (now.length < FEWEST.toSayAnything) return { kind: 'waits', why: 'tooFew' };
  if (!before) return { kind: 'frozen', members: [...now], added: now.length, removed: 0, satOut: 0 };
  const was = new Map(before.map(({ dog, reading }) => [dog, reading]));
  const stayed = now.filter(({ dog, reading }) => was.get(dog) === reading);
  const came = now.filter(({ dog, reading }) => was.get(dog) !== reading);
  const left = before.length - stayed.length;
  if (came.length === 0 && left === 0) return { kind: 'waits', why: 'unchanged' };
  const joins = came.length >= FEWEST.toSayAnything ? came : [];
  if (joins.length === 0 && left < FEWEST.toSayAnything) return { kind: 'waits', why: 'tooFewChanged' };
  const satOut = left === 0 ? 0 : Math.max(0, FEWEST.toSayAnything - left);
  const out = new Set([...stayed].sort((a, b) => (lot(a.dog) < lot(b.dog) ? -1 : 1)).slice(0, satOut).map(({ dog }) => dog));
  const members = [...stayed.filter(({ dog }) => !out.has(dog)), ...joins];
  if (members.length < FEWEST.toSayAnything) return { kind: 'waits', why: 'tooFew' };
  return { kind: 'frozen', members, added: joins.length, removed: left + out.size, satOut: out.size };
}
