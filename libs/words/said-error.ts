import { said, type Said } from './said.js';
import { translator } from './translator.js';
import type { StaffSentence } from './words.js';

/** Thrown or stored now, and said to whoever reads of it, in their language. The compiler refuses a sentence that has no German. */
export type Tellable = Said<StaffSentence>;

/** For logs, and for rows that were read before they could be said. */
export const inPlainEnglish = translator('en', {}, { isolate: false }).said;

/** An error that is told in the language of whoever reads of it. What no catalogue has is told as it stands. */
export class SaidError extends Error {
  readonly said: Tellable;

  constructor(what: Tellable | string, options?: ErrorOptions) {
    const told = typeof what === 'string' ? said(what as StaffSentence) : what;
    super(inPlainEnglish(told), options);
    this.said = told;
  }
}
