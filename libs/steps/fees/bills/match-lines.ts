import type { WhyUnmatched } from '#libs/contracts/centre-bills';
import { findStudy, type StudyAt } from './find-study.js';

/** A line of a bill that stands, and what a person said of it last. */
export interface LineToMatch {
  id: string;
  centre: string;
  reference: string;
  study: string;
  amountMinor: number;
  said: { says: 'matched'; study: string } | { says: 'disputed'; words: string } | null;
}

export type Matched =
  | { state: 'matched'; of: StudyAt; byHand: boolean }
  | { state: 'disputed'; of: StudyAt | null; words: string }
  | { state: 'unmatched'; why: WhyUnmatched; of: StudyAt | null; takenBy: string | null };

/** One study at one centre: what is billed once. */
export const keyOf = (centre: string, study: string): string => `${centre} ${study}`;

/**
 * Gives every line its study, or says why it has none; no study is given twice. What a person has said goes first, then
 * the lines in the order in which they were entered. A disputed line takes no study from another.
 * @param lines all lines of all bills that stand, in the order of entering
 * @param studies what was asked for, with what was sent to which centre
 */
export function matchLines(lines: readonly LineToMatch[], studies: readonly StudyAt[]): Map<string, Matched> {
  const taken = new Map<string, string>();
  const matched = new Map<string, Matched>();
  for (const line of lines) {
    const { said } = line;
    if (said?.says !== 'matched') continue;
    const of = studies.find((s) => s.study === said.study && s.centre === line.centre);
    if (!of || taken.has(keyOf(line.centre, of.study))) continue;
    taken.set(keyOf(line.centre, of.study), line.id);
    matched.set(line.id, { state: 'matched', of, byHand: true });
  }
  for (const line of lines) if (!matched.has(line.id)) matched.set(line.id, byItself(line, studies, taken));
  return matched;
}

function byItself(line: LineToMatch, studies: readonly StudyAt[], taken: Map<string, string>): Matched {
  const found = findStudy(line, studies);
  const meant = 'why' in found ? (found.of ?? null) : null;
  if (line.said?.says === 'disputed') return { state: 'disputed', of: 'why' in found ? meant : found.of[0]!, words: line.said.words };
  if ('why' in found) return { state: 'unmatched', why: found.why, of: meant, takenBy: null };
  // An order may hold the same study twice, when it was asked for anew.
  const of = found.of.find((s) => !taken.has(keyOf(line.centre, s.study)));
  if (!of) return { state: 'unmatched', why: 'alreadyBilled', of: found.of[0]!, takenBy: taken.get(keyOf(line.centre, found.of[0]!.study))! };
  if (line.amountMinor !== of.feeMinor) return { state: 'unmatched', why: 'otherAmount', of, takenBy: null };
  taken.set(keyOf(line.centre, of.study), line.id);
  return { state: 'matched', of, byHand: false };
}
