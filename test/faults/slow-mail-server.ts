import type { AddressInfo } from 'node:net';
import { text } from 'node:stream/consumers';
import { SMTPServer } from 'smtp-server';
import { Happenings } from '#test/medium/queue-support/until';

export interface Taken {
  messageId: string;
  to: string;
}

/** A mail server that, while it is slow, reads a mail to its end and then says nothing; nobody can know whether it has it. */
export class SlowMailServer {
  slow = true;
  readonly #unanswered: (() => void)[] = [];
  /** Mails whose text came, answered or not. */
  readonly begun = new Happenings<Taken>();
  /** Mails that it said it has. */
  readonly taken = new Happenings<Taken>();
  readonly #server = new SMTPServer({
    authOptional: true,
    disabledCommands: ['STARTTLS', 'AUTH'],
    onData: (stream, session, done) => {
      text(stream).then((mail) => {
        const one = { messageId: /^message-id:\s*(\S+)/im.exec(mail)?.[1] ?? '', to: session.envelope.rcptTo.map((r) => r.address).join(', ') };
        this.begun.add(one);
        const answer = () => {
          this.taken.add(one);
          done();
        };
        if (this.slow) this.#unanswered.push(answer);
        else answer();
      }, done);
    },
  });

  async start(): Promise<string> {
    // A worker that is killed leaves its line hanging, which is what these tests are about.
    this.#server.on('error', () => undefined);
    await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
    return `smtp://127.0.0.1:${(this.#server.server.address() as AddressInfo).port}`;
  }

  /** It was slow, not dead: whoever still waits is told now. */
  answerAll(): void {
    this.slow = false;
    for (const answer of this.#unanswered.splice(0)) answer();
  }

  close(): Promise<void> {
    return new Promise((resolve) => this.#server.close(resolve));
  }
}
