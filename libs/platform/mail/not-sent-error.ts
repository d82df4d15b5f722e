import { RetryableError } from '../queue/job-errors.js';

/** Nothing was sent: the mail server could not be reached or put the mail off. */
export class NotSentError extends RetryableError {
  override readonly name = 'NotSentError';
}
