import { SaidError, type Tellable } from '#libs/words/said-error';

/**
 * Thrown by the pure libraries when an input cannot be meant.
 * `code` is stable and in capitals; `said` is a sentence for the person who typed it
 * and says what to do. Nothing has changed when it is thrown.
 */
export class ScienceError extends SaidError {
  override readonly name = 'ScienceError';

  constructor(
    readonly code: string,
    what: Tellable | string,
  ) {
    super(what);
  }
}
