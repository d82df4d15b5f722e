import type { ReadingAnswer } from '#libs/contracts/results-in';
import type { Tellable } from '#libs/words/said-error';
import { t } from '#libs/words/spoken';

/** What became of a reading, as it is kept: in no language yet. */
export interface Kept extends Omit<ReadingAnswer, 'words' | 'asks'> {
  told: Tellable[];
  asks: Tellable[];
}

/** One sentence after the other, to whoever asks. */
export const sayAll = (told: readonly Tellable[]): string => told.map((one) => t.said(one)).join(' ');

/** To whoever asks, in their language; an answer from before was kept as its English text. */
export function answerOf(kept: Kept | ReadingAnswer): ReadingAnswer {
  if (!('told' in kept)) return kept;
  const { told, asks, ...rest } = kept;
  return { ...rest, words: sayAll(told), asks: asks.map((one) => t.said(one)) };
}
