import type { MailOutcome } from './mailer.js';
import { NotSentError } from './not-sent-error.js';

export interface SmtpFailure extends Error {
  code?: string;
  command?: string;
  response?: string;
  responseCode?: number;
}

/** Replies to these speak of the mail; a refusal of the sign-in, say, speaks of our settings. */
const ABOUT_THE_MAIL = new Set(['MAIL FROM', 'RCPT TO', 'DATA']);

/** 503 speaks of a muddled session (RFC 5321), 530 of a sign-in that was wanted (RFC 4954). */
const NOT_ABOUT_THE_MAIL = new Set([503, 530]);

/**
 * RFC 5321 section 4.2.1: 4yz is a transient and 5yz a permanent refusal; in both cases the server has not taken
 * the mail. Without a reply, all depends on whether the mail itself had begun to leave.
 */
export function outcomeOfError(error: SmtpFailure, mailHasBegun: boolean): MailOutcome {
  const detail = error.response ?? error.message;
  if (error.responseCode) {
    const refused = error.responseCode >= 500 && !NOT_ABOUT_THE_MAIL.has(error.responseCode) && ABOUT_THE_MAIL.has(error.command ?? '');
    if (refused) return { outcome: 'bounced', detail };
    throw new NotSentError(`The mail server did not take the mail: ${detail}`, { cause: error });
  }
  if (mailHasBegun) return { outcome: 'unknown', detail: `The line to the mail server was lost while the mail was being handed over: ${detail}` };
  if (error.code === 'EENVELOPE' || error.code === 'EMESSAGE') return { outcome: 'bounced', detail };
  throw new NotSentError(`The mail server could not be reached: ${detail}`, { cause: error });
}
