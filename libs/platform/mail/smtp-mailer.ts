import { Readable } from 'node:stream';
import { createTransport } from 'nodemailer';
import type { Mailer, MailOutcome, OutgoingMail } from './mailer.js';
import { outcomeOfError, type SmtpFailure } from './outcome-of-error.js';

const SECONDS = 1000;

export class SmtpMailer implements Mailer {
  readonly #url: string;
  readonly #from: string;

  constructor(options: { url: string; from: string }) {
    this.#url = options.url;
    this.#from = options.from;
  }

  async send(mail: OutgoingMail): Promise<MailOutcome> {
    let mailHasBegun = false;
    const transport = createTransport({
      url: this.#url,
      connectionTimeout: 15 * SECONDS,
      greetingTimeout: 15 * SECONDS,
      socketTimeout: 60 * SECONDS,
      disableFileAccess: true,
      disableUrlAccess: true,
    });
    // the library reads the mail only when the server has answered DATA, and does not tell so otherwise
    transport.use('stream', (prepared, done) => {
      const open = prepared.message.createReadStream.bind(prepared.message);
      prepared.message.createReadStream = () =>
        Readable.from(
          (async function* () {
            mailHasBegun = true;
            yield* open();
          })(),
          { objectMode: false },
        ) as ReturnType<typeof open>;
      done();
    });
    try {
      const sent = await transport.sendMail({ ...content(mail), from: this.#from });
      return { outcome: 'delivered', detail: sent.response ?? '' };
    } catch (error) {
      return outcomeOfError(error as SmtpFailure, mailHasBegun);
    } finally {
      transport.close();
    }
  }
}

function content(mail: OutgoingMail) {
  return {
    messageId: mail.messageId,
    to: { name: '', address: mail.to },
    replyTo: mail.replyTo,
    subject: mail.subject,
    text: mail.text,
    html: mail.html,
    attachments: mail.attachments,
    icalEvent: mail.calendar && { method: mail.calendar.method, content: mail.calendar.content, filename: 'invitation.ics' },
    // RFC 3834: keeps holiday answers and list robots from replying to a program
    headers: { 'Auto-Submitted': 'auto-generated' },
  };
}
