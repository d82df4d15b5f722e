/**
 * Thrown by the pure libraries when an input cannot be meant.
 * `code` is stable and in capitals; `message` is a sentence for the person who typed it
 * and says what to do. Nothing has changed when it is thrown.
 */
export class ScienceError extends Error {
  override readonly name = 'ScienceError';

  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}
