import type { AddressInfo } from 'node:net';
import { buffer } from 'node:stream/consumers';
import { simpleParser } from 'mailparser';
import { SMTPServer } from 'smtp-server';

export interface CapturedMail {
  messageId: string;
  from: string;
  to: string[];
  subject: string;
  text: string;
  html: string;
  attachments: { filename: string; contentType: string; content: Buffer }[];
  /** The mail as it came over the line. */
  raw: Buffer;
  receivedAt: Date;
}

export interface CaptureOptions {
  /** The sender is told "delivered" only after this has ended without an error. */
  store: (mail: CapturedMail) => Promise<void>;
  onError: (error: Error) => void;
  maxBytes?: number;
}

/** A real SMTP server on the loopback address that keeps every mail and sends none. */
export class CaptureServer {
  readonly #server: SMTPServer;
  readonly #options: CaptureOptions;

  constructor(options: CaptureOptions) {
    this.#options = options;
    this.#server = new SMTPServer({
      authOptional: true,
      disabledCommands: ['STARTTLS', 'AUTH'],
      disableReverseLookup: true,
      size: options.maxBytes ?? 25 * 1024 * 1024,
      onData: (stream, session, answer) => {
        const to = session.envelope.rcptTo.map((recipient) => recipient.address);
        const from = session.envelope.mailFrom ? session.envelope.mailFrom.address : '';
        buffer(stream)
          .then(async (raw) => {
            if (stream.sizeExceeded) throw Object.assign(new Error('The mail is too large'), { responseCode: 552 });
            await options.store(await parse(raw, from, to));
          })
          .then(
            () => answer(null, 'kept'),
            (error: Error) => {
              options.onError(error);
              answer(Object.assign(error, { responseCode: (error as { responseCode?: number }).responseCode ?? 451 }));
            },
          );
      },
    });
  }

  /** Answers the address to give to a mailer; the port is any free one. */
  async start(): Promise<string> {
    await new Promise<void>((resolve, reject) => {
      this.#server.once('error', reject);
      this.#server.listen(0, '127.0.0.1', resolve);
    });
    this.#server.on('error', this.#options.onError);
    return `smtp://127.0.0.1:${(this.#server.server.address() as AddressInfo).port}`;
  }

  close(): Promise<void> {
    return new Promise((resolve) => this.#server.close(resolve));
  }
}

async function parse(raw: Buffer, from: string, to: string[]): Promise<CapturedMail> {
  const mail = await simpleParser(raw);
  return {
    messageId: mail.messageId ?? '',
    from,
    to,
    subject: mail.subject ?? '',
    text: mail.text ?? '',
    html: mail.html || '',
    attachments: mail.attachments.map(({ filename, contentType, content }) => ({ filename: filename ?? '', contentType, content })),
    raw,
    receivedAt: new Date(),
  };
}
