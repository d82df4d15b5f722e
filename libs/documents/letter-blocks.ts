import type { StandingView } from '#libs/contracts/standing';
import type { Words } from '#libs/words/words';
import type { DogWords } from './dog-words.js';
import type { Block } from './print/light-markup.js';
import type { LetterSnapshot } from './snapshots.js';

/** A row of the table of joints: "Left hip", "0.38", and the value in words. */
export interface JointRow {
  name: string;
  value: string;
  words: string;
}

export type Line = NonNullable<StandingView['line']>;

export type LetterBlock = Block | { kind: 'subheading'; text: string } | { kind: 'small'; text: string } | { kind: 'joints'; rows: JointRow[] } | { kind: 'twenty'; line: Line };

export interface LetterPart {
  heading: string;
  blocks: LetterBlock[];
}

/** Whom the letter is about, and in which language. */
export interface Telling {
  t: Words;
  dog: DogWords;
  day: (date: string) => string;
}

export type ResultSnapshot = Extract<LetterSnapshot, { kind: 'result' | 'amended' }>;

export const paragraph = (text: string): LetterBlock => ({ kind: 'paragraph', text });
