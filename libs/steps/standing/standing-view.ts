import type { Words } from '#libs/words/words';
import type { Standing, StandingView } from '#libs/contracts/standing';
import type { Fact } from '#libs/pathway/facts';
import { placeWords, standingWords } from '#libs/documents/texts/standing';
import { pronouns } from '#libs/documents/words';

export interface NamedDog { callName: string; sex: 'male' | 'female' | 'unknown' }

/** As the last letter of the study gave it, unless its result was taken back since. */
export function toldStanding(facts: readonly Fact[], study: string): Standing | null {
  const withdrawn = new Set(facts.flatMap((f) => (f.type === 'resultWithdrawn' ? [f.result] : [])));
  const letter = facts.findLast((f) => f.type === 'letterReleased' && f.study === study && f.kind === 'result');
  if (letter?.type !== 'letterReleased' || withdrawn.has(letter.result ?? '')) return null;
  return (letter.detail?.standing as Standing | undefined) ?? null;
}

const wordsOf = ({ callName, sex }: NamedDog) => ({ name: callName, names: `${callName}’s`, ...pronouns(sex) });

export function standingOnPage(facts: readonly Fact[], study: string, dog: NamedDog, t: Words): StandingView | null {
  const told = toldStanding(facts, study);
  return told && standingWords(told, wordsOf(dog), t);
}

/** For a table: the place, or why there is none, and what it was counted from. */
export function standingCells(facts: readonly Fact[], study: string, dog: string): [place: string, among: string] {
  const told = toldStanding(facts, study);
  if (!told) return ['', ''];
  const words = standingWords(told, wordsOf({ callName: dog, sex: 'unknown' }));
  return told.kind === 'place' ? [placeWords(told), words.small[0]!] : [words.lead, ''];
}
