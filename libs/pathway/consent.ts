import type { Bag } from './bag.js';
import { compareFacts } from './effective.js';
import type { FactOf, Purpose } from './facts.js';

type Given = FactOf<'consentGiven'>;
type Withdrawn = FactOf<'consentWithdrawn'>;

/** What was last said for one purpose. */
export function lastWord(purpose: Purpose, ...bags: Bag[]): Given | Withdrawn | undefined {
  const given = bags.flatMap((bag) => bag.all('consentGiven'));
  const withdrawn = bags.flatMap((bag) => bag.all('consentWithdrawn'));
  let last: Given | Withdrawn | undefined;
  for (const fact of [...given, ...withdrawn]) {
    if (fact.purpose === purpose && (!last || compareFacts(fact, last) > 0)) last = fact;
  }
  return last;
}

export type Lack = 'answer' | 'withdrawn' | 'signer' | 'textVersion' | 'centre' | 'otherOwner' | 'sold';

/**
 * What a consent lacks, or null when it stands. `text` is the version that must have been signed; undefined where any
 * signed version holds, as after the first film.
 */
export function lack(word: Given | Withdrawn | undefined, text: string | undefined, centre?: string): Lack | null {
  if (!word) return 'answer';
  if (word.type === 'consentWithdrawn') return 'withdrawn';
  if (word.answer !== 'yes') return 'answer';
  if (word.signerRole === 'agent' && !word.authority) return 'signer';
  if (text !== undefined && word.textVersion !== text) return 'textVersion';
  if (centre !== undefined && word.centre !== undefined && word.centre !== centre) return 'centre';
  return null;
}

/** What is still missing of a purpose, and whose word where every owner gives one. */
export interface Lacking { lacks: Lack; owners?: string[] }

/** As `lack`, where each of these owners must have said yes: with their own hand or by an agent's, and since the last time that a yes was taken back. */
export function lackOf(purpose: Purpose, bags: Bag[], signers: readonly string[], text: string | undefined, centre?: string): Lacking | null {
  const word = lastWord(purpose, ...bags);
  const lacks = lack(word, text, centre);
  if (signers.length === 0 || !word || word.type === 'consentWithdrawn') return lacks && { lacks };
  const withdrawn = bags.flatMap((bag) => bag.all('consentWithdrawn')).filter((fact) => fact.purpose === purpose);
  const given = bags.flatMap((bag) => bag.all('consentGiven')).filter((fact) => fact.purpose === purpose && !withdrawn.some((back) => compareFacts(back, fact) > 0)).sort(compareFacts);
  const owners = signers.filter((owner) => lack(given.findLast((fact) => (fact.for ?? fact.signer) === owner), text, centre) !== null);
  return owners.length === 0 ? null : { lacks: lacks ?? 'otherOwner', owners };
}
