import { SaidError } from '#libs/words/said-error';

/** What a handler throws to say what should become of its job. Any other error counts as retryable. */
export class RetryableError extends SaidError {
  override readonly name: string = 'RetryableError';
}

/** Trying again cannot help: the job is given up at once and becomes a visible problem. */
export class PermanentError extends SaidError {
  override readonly name = 'PermanentError';
}

/** Nothing is wrong, it is only too early; uses up none of the attempts. */
export class NotYetError extends Error {
  readonly until: Date;

  constructor(until: Date, message: string) {
    super(message);
    this.name = 'NotYetError';
    this.until = until;
  }
}
