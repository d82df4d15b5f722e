import net from 'node:net';
import { once } from 'node:events';
import { CaptureServer, type CapturedMail } from '#libs/platform/mail/capture-server';
import { Happenings } from '#test/medium/queue-support/until';

type Fault = 'refused' | 'cutOff';

/** A real mail server that keeps what it is given, and on demand refuses a mail or is cut off before it can say that it has it. */
export class MailServer {
  readonly #came = new Happenings<CapturedMail>();
  readonly #faults = new Map<string, Fault>();
  readonly #lines = new Set<net.Socket>();
  readonly #capture = new CaptureServer({ store: (mail) => this.#store(mail), onError: () => undefined });
  #door: net.Server | undefined;

  /** `keep` is asked before the mail counts as taken. */
  constructor(private readonly keep: (mail: CapturedMail) => Promise<void> = async () => undefined) {}

  /** The address to give to a mailer. */
  async start(): Promise<string> {
    const { port } = new URL(await this.#capture.start());
    this.#door = net.createServer((line) => {
      const inner = net.connect(Number(port), '127.0.0.1');
      this.#lines.add(line);
      line.on('close', () => this.#lines.delete(line));
      for (const socket of [line, inner]) socket.on('error', () => socket.destroy());
      line.on('close', () => inner.destroy());
      inner.on('close', () => line.destroy());
      line.pipe(inner).pipe(line);
    });
    this.#door.listen(0, '127.0.0.1');
    await once(this.#door, 'listening');
    return `smtp://127.0.0.1:${(this.#door.address() as net.AddressInfo).port}`;
  }

  /** The next mail to this address is refused for good (SMTP 550), or the line is lost once the mail has been taken. */
  nextTo(address: string, fault: Fault): void {
    this.#faults.set(address, fault);
  }

  to(address: string): CapturedMail[] {
    return this.#came.all.filter((mail) => mail.to.includes(address));
  }

  get all(): CapturedMail[] {
    return this.#came.all;
  }

  /** Resolves with the n-th mail to this address whose subject fits, as soon as it has come. */
  async wait(address: string, subject: RegExp, n = 1): Promise<CapturedMail> {
    const fitting = () => this.to(address).filter((mail) => subject.test(mail.subject));
    await this.#came.until(() => fitting().length >= n);
    return fitting()[n - 1]!;
  }

  async close(): Promise<void> {
    for (const line of this.#lines) line.destroy();
    await new Promise((resolve) => this.#door?.close(resolve));
    await this.#capture.close();
  }

  async #store(mail: CapturedMail): Promise<void> {
    const fault = mail.to.map((address) => this.#faults.get(address)).find(Boolean);
    for (const address of mail.to) this.#faults.delete(address);
    if (fault === 'refused') throw Object.assign(new Error('No such mailbox here'), { responseCode: 550 });
    await this.keep(mail);
    this.#came.add(mail);
    if (fault === 'cutOff') for (const line of this.#lines) line.destroy();
  }
}
