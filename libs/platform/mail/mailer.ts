export interface OutgoingMail {
  /** Derived from the once-ever row of this sending, so that a mail sent twice can be told by its id. */
  messageId: string;
  /** One person: each recipient has a row and an outcome of their own. */
  to: string;
  subject: string;
  text: string;
  html: string;
  replyTo?: string;
  attachments?: { filename: string; contentType: string; content: Buffer }[];
  calendar?: { method: 'REQUEST' | 'CANCEL' | 'PUBLISH'; content: string };
}

export interface MailOutcome {
  /** `unknown`: the mail was on its way when the line was lost; only a person may decide to send it again. */
  outcome: 'delivered' | 'bounced' | 'unknown';
  /** What the mail server said, or what happened. */
  detail: string;
}

/** Throws NotSentError when nothing has been sent and a later attempt may help. */
export interface Mailer {
  send(mail: OutgoingMail): Promise<MailOutcome>;
}

export function messageIdOf(rowId: string, domain: string): string {
  if (!/^[A-Za-z0-9.-]+$/.test(rowId) || !/^[A-Za-z0-9.-]+$/.test(domain)) throw new RangeError('A Message-ID is made of a plain id and a domain.');
  return `<${rowId}@${domain}>`;
}
