import type { Block } from './print/light-markup.js';
import type { LetterSnapshot } from './snapshots.js';

/** A row of the table of joints: "Left hip", "0.38", and the value in words. */
export interface JointRow {
  name: string;
  value: string;
  words: string;
}

export type LetterBlock = Block | { kind: 'subheading'; text: string } | { kind: 'joints'; rows: JointRow[] };

export interface LetterPart {
  heading: string;
  blocks: LetterBlock[];
}

export type ResultSnapshot = Extract<LetterSnapshot, { kind: 'result' | 'amended' }>;

export const paragraph = (text: string): LetterBlock => ({ kind: 'paragraph', text });
