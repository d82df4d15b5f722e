import type { LetterSnapshot } from './snapshots.js';
import { pronouns } from './words.js';

/** What stands in a sentence for the dog. Other languages than English speak of it by its name alone. */
export type DogWords = {
  /** What the owner calls the dog. */
  name: string;
  /** The same with the possessive: "Brannoch’s". */
  names: string;
  he: string;
  him: string;
  his: string;
};

export function dogWords(snapshot: Pick<LetterSnapshot, 'dog'>): DogWords {
  const { callName, sex } = snapshot.dog;
  return { name: callName, names: `${callName}’s`, ...pronouns(sex) };
}
