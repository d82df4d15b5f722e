import type { Said } from './said.js';
import { inPlainEnglish, type Tellable } from './said-error.js';

/** What a row holds for whoever reads it: sentences, in no language yet. A row from before has its English text alone. */
export interface Stored {
  words: string | null;
  sentences: Said[] | null;
}

/** The text is for whoever looks into the table, and for the program before. */
export const stored = (sentences: readonly Tellable[]): { words: string; sentences: string } => ({ words: sentences.map(inPlainEnglish).join(' '), sentences: JSON.stringify(sentences) });

export const sayStored = ({ words, sentences }: Stored, t: { said: (what: Said) => string; known: (text: string) => string }): string => sentences?.map((one) => t.said(one)).join(' ') ?? t.known(words ?? '');
