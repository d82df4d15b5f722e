import { RetryableError } from '../queue/job-errors.js';

/** Nothing was sent: the mail server could not be reached or put the mail off. */
export class NotSentError extends RetryableError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'NotSentError';
  }
}
