/** What a handler throws to say what should become of its job. Any other error counts as retryable. */
export class RetryableError extends Error {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'RetryableError';
  }
}

/** Trying again cannot help: the job is given up at once and becomes a visible problem. */
export class PermanentError extends Error {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'PermanentError';
  }
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
