import { once } from 'node:events';
import net from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { CaptureServer, type CapturedMail } from '#libs/platform/mail/capture-server';
import type { Chance } from './chance.js';

/** What the mail server is like when somebody calls. */
export type Mood = 'well' | 'refusesTheLine' | 'saysNothing' | 'putsOff' | 'refusesTheMail' | 'takesAndDrops' | 'dropsUntaken';

const MOODS: Mood[] = ['refusesTheLine', 'saysNothing', 'putsOff', 'refusesTheMail', 'takesAndDrops', 'dropsUntaken'];
const MOODY = 0.35;

/** A real mail server that is reached through a bad line: it hangs, refuses, or takes a mail and is cut off before it can say so. */
export class MoodyMailServer {
  /** Message-IDs of the mails that it has, told or not. */
  readonly held: string[] = [];
  readonly errors: Error[] = [];
  readonly moods = new Map<Mood, number>();
  /** What it is like from now on; by lot, it is well most of the time. */
  mood: Mood | 'byLot' = 'byLot';
  silenceMs = 4000;
  readonly #lines = new Set<net.Socket>();
  readonly #capture = new CaptureServer({ store: (mail) => this.#store(mail), onError: (error) => this.errors.push(error) });
  #door: net.Server | undefined;

  /** A mail to somebody who may not be refused for good is put off instead. */
  constructor(private readonly chance: Chance, private readonly mayRefuse: (to: string) => boolean = () => true) {}

  async start(): Promise<string> {
    const { port } = new URL(await this.#capture.start());
    this.#door = net.createServer((line) => void this.#answer(line, Number(port)));
    this.#door.listen(0, '127.0.0.1');
    await once(this.#door, 'listening');
    return `smtp://127.0.0.1:${(this.#door.address() as net.AddressInfo).port}`;
  }

  async close(): Promise<void> {
    for (const line of this.#lines) line.destroy();
    await new Promise((resolve) => this.#door?.close(resolve));
    await this.#capture.close();
  }

  #mood(among: readonly Mood[]): Mood {
    const drawn = () => (this.chance.next() < MOODY ? this.chance.oneOf(MOODS) : 'well');
    const one = this.mood === 'byLot' ? drawn() : this.mood;
    const mood = among.includes(one) ? one : 'well';
    this.moods.set(mood, (this.moods.get(mood) ?? 0) + 1);
    return mood;
  }

  async #answer(line: net.Socket, port: number): Promise<void> {
    this.#lines.add(line);
    line.on('close', () => this.#lines.delete(line));
    line.on('error', () => line.destroy());
    const mood = this.#mood(['refusesTheLine', 'saysNothing']);
    if (mood === 'saysNothing') await pause(this.silenceMs, undefined, { ref: false });
    if (mood !== 'well') return void line.destroy();
    const inner = net.connect(port, '127.0.0.1');
    inner.on('error', () => inner.destroy());
    line.on('close', () => inner.destroy());
    inner.on('close', () => line.destroy());
    line.pipe(inner).pipe(line);
  }

  async #store(mail: CapturedMail): Promise<void> {
    const mood = this.#mood(['putsOff', 'refusesTheMail', 'takesAndDrops', 'dropsUntaken']);
    const refused = mood === 'refusesTheMail' && mail.to.every(this.mayRefuse);
    if (refused) throw Object.assign(new Error('No such mailbox here'), { responseCode: 550 });
    if (mood === 'putsOff' || mood === 'refusesTheMail') throw Object.assign(new Error('Try again later'), { responseCode: 451 });
    if (mood !== 'dropsUntaken') this.held.push(mail.messageId);
    if (mood === 'well') return;
    for (const line of this.#lines) line.destroy();
    await pause(0);
  }
}
