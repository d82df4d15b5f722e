import { randomUUID } from 'node:crypto';
import type { BookingOptions, Slot } from '#libs/contracts/booking';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { questions } from '#libs/contracts/common';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import type { DemoDog, DemoScheme, House } from '#seed/demo-scheme';
import { demoSignIns } from '#seed/sign-ins';
import type { Chance } from '../kills/chance.js';

export interface Asked { what: string; ms: number; status: number; words: string }

/** One of many at the desks of the demo's practices: looks, searches, writes down and books, with a session of their own. */
export class Person {
  #cookie = '';
  #csrf = '';
  #orders: string[] = [];
  readonly asked: Asked[] = [];

  constructor(private readonly url: string, private readonly address: string, private readonly house: House, private readonly scheme: DemoScheme, private readonly chance: Chance) {}

  async signIn(): Promise<void> {
    const { email, password } = demoSignIns().find((s) => s.name === this.house.desk.name)!;
    const reply = await fetch(`${this.url}/api/sign-in`, { method: 'POST', headers: this.#headers, body: JSON.stringify({ email, password }) });
    if (reply.status !== 200) throw new Error(`Nobody could sign in: ${reply.status} ${await reply.text()}`);
    this.#cookie = reply.headers.getSetCookie().at(-1)!.split(';')[0]!;
    this.#csrf = ((await reply.json()) as { csrf: string }).csrf;
  }

  /** One thing that a desk does; what came of it is noted. */
  async step(): Promise<void> {
    const dice = this.chance.next();
    if (dice < 0.25) await this.#ask('the day board', 'GET', '/api/day-board');
    else if (dice < 0.45) await this.#list();
    else if (dice < 0.7) await this.#look();
    else if (dice < 0.85) await this.#ask('a search', 'GET', `/api/search?q=${this.chance.oneOf(['al', 'ne', 'mor', 'pe'])}`);
    else if (dice < 0.95) await this.#write();
    else await this.#book();
  }

  async #list(): Promise<void> {
    const list = await this.#ask<{ rows: { id: string }[] }>('the list of orders', 'GET', '/api/orders');
    if (list) this.#orders = list.rows.map((row) => row.id);
  }

  async #look(): Promise<OrderScreen | undefined> {
    if (this.#orders.length === 0) return void (await this.#list());
    return this.#ask<OrderScreen>('an order', 'GET', `/api/orders/${this.chance.oneOf(this.#orders)}`);
  }

  /** The questions about the dog, asked and answered at the desk; somebody else may have been quicker. */
  async #write(): Promise<void> {
    const order = await this.#look();
    if (!order?.next.some((n) => n.action === 'giveAnswers')) return;
    const input = { stage: 'booking', answers: Object.fromEntries(questions.map((q) => [q, 'no'])) };
    await this.#ask('an action', 'POST', `/api/orders/${order.id}/actions/giveAnswers`, { key: randomUUID(), version: order.version, on: order.visits.at(-1)!.id, input });
  }

  async #book(): Promise<void> {
    const dog = this.chance.oneOf([...this.scheme.dogs.values()].filter((d) => d.house.id === this.house.id && d.ageDays > GROWN_DAYS));
    const studies = [{ protocol: 'elbow', version: currentProtocols().find((p) => p.code === 'elbow')!.version, centre: this.scheme.centres.threnfold.id }];
    const options = await this.#ask<BookingOptions>('free times', 'POST', '/api/booking/options', { dog: dog.id, studies, days: 14 });
    const slot = options?.slots.length ? this.chance.oneOf(options.slots) : undefined;
    if (options && slot) await this.#ask('a booking', 'POST', '/api/bookings', booking(dog, studies, options, slot));
  }

  async #ask<T>(what: string, method: 'GET' | 'POST', path: string, body?: object): Promise<T | undefined> {
    const began = performance.now();
    let status = 0;
    let text: string;
    try {
      const reply = await fetch(this.url + path, { method, headers: this.#headers, ...(body && { body: JSON.stringify(body) }), signal: AbortSignal.timeout(PATIENCE_MS) });
      text = await reply.text();
      status = reply.status;
    } catch (error) {
      text = String(error);
    }
    this.asked.push({ what, ms: performance.now() - began, status, words: status >= 200 && status < 300 ? '' : text.slice(0, 200) });
    return status >= 200 && status < 300 ? (JSON.parse(text) as T) : undefined;
  }

  get #headers(): Record<string, string> {
    return { 'content-type': 'application/json', 'x-forwarded-for': this.address, ...(this.#cookie && { cookie: this.#cookie, 'x-csrf': this.#csrf }) };
  }
}

const GROWN_DAYS = 560;
const PATIENCE_MS = 60_000;

function booking(dog: DemoDog, studies: object[], options: BookingOptions, { room, operator, nurse, vet, ...when }: Slot): object {
  return {
    key: randomUUID(), dog: dog.id, studies, slot: { ...when, room: room.id, operator: operator.id, nurse: nurse.id, vet: vet.id },
    answers: Object.fromEntries(options.questions.map((q) => [q.question, 'no'])), payer: dog.person.id,
    addressees: [{ person: dog.person.id, channel: dog.person.channel }], estimateTotalMinor: options.estimate.total.amountMinor, advice: options.advice[0]!.id,
  };
}
