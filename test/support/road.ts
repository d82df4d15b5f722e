import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import type { Response } from 'supertest';
import type { actionInputs, ActionName } from '#libs/contracts/actions/all';
import type { BookingOptions, Slot } from '#libs/contracts/booking';
import type { OrderScreen, StudyView, Uploaded, VisitView } from '#libs/contracts/screens/order';
import { addDays } from '#libs/pathway/days';
import { localDay } from '#libs/pathway/zones';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { instantOf } from '#libs/steps/record/local-time';
import type { CentreKey } from '#seed/centre';
import { dogNamed, type DemoDog, type House } from '#seed/demo-scheme';
import { owners } from '#seed/owners';
import { aDicomFilm, aFilm } from './film.js';
import type { RunningServer } from './running-server.js';
import type { Session } from './session.js';

type Input<A extends ActionName> = z.input<(typeof actionInputs)[A]>;
/** Who does it, in the one lane that these roads use. */
export type Who = 'desk' | 'nurse' | 'operator' | 'vet' | 'manager';

export interface Wanted {
  dog: string;
  studies: [protocol: string, centre: CentreKey][];
  inDays?: number;
}

/** One order as the people of the practice see and change it, over HTTP. */
export class Road {
  screen!: OrderScreen;
  slot!: Slot;
  /** Who has seen the order's page, once for every time: what the audit must know of. */
  readonly looks: string[] = [];

  private constructor(readonly server: RunningServer, readonly dog: DemoDog) {}

  static async book(server: RunningServer, { dog: call, studies, inDays = 7 }: Wanted): Promise<Road> {
    const road = new Road(server, dogNamed(server.scheme, call));
    const desk = await road.as('desk');
    const chosen = studies.map(([protocol, centre]) => ({ protocol, version: currentProtocols().find((p) => p.code === protocol)!.version, centre: server.scheme.centres[centre].id }));
    const options = await desk.send<BookingOptions>('/api/booking/options', { dog: road.dog.id, studies: chosen, from: addDays(road.today, inDays), days: 7 });
    road.slot = options.slots[0]!;
    const { room, operator, nurse, vet, ...when } = road.slot;
    const booking = {
      key: randomUUID(), dog: road.dog.id, studies: chosen, slot: { ...when, room: room.id, operator: operator.id, nurse: nurse.id, vet: vet.id },
      answers: Object.fromEntries(options.questions.map((q) => [q.question, 'no'])), payer: road.dog.person.id,
      addressees: [{ person: road.dog.person.id, channel: 'mail' }], estimateTotalMinor: options.estimate.total.amountMinor, advice: options.advice[0]!.id,
    };
    const { body } = await desk.post('/api/bookings', booking).expect(201);
    await road.look('desk', (body as { order: string }).order);
    return road;
  }

  /** An order that was booked some other way. */
  static async of(server: RunningServer, dog: DemoDog, order: string, slot: Slot): Promise<Road> {
    const road = new Road(server, dog);
    road.slot = slot;
    await road.look('desk', order);
    return road;
  }

  get house(): House { return this.dog.house; }
  get id(): string { return this.screen.id; }
  get visit(): VisitView { return this.screen.visits.at(-1)!; }
  get today(): string { return localDay(this.server.clock.now().toISOString(), this.house.zone); }
  get email(): string { return owners.find((o) => o.name === this.dog.person.name)!.mail!; }
  /** By protocol; the only one when none is named. */
  study(protocol?: string): StudyView {
    const study = this.screen.studies.find((s) => !protocol || s.protocol === protocol);
    if (!study) throw new Error(`There is no study ${protocol ?? ''}.`);
    return study;
  }

  name(who: Who): string {
    if (who === 'desk' || who === 'manager') return this.house[who].name;
    return this.slot[who].name;
  }

  as(who: Who): Promise<Session> { return this.server.as(this.name(who)); }

  async look(who: Who = 'desk', id = this.id): Promise<OrderScreen> {
    const session = await this.as(who);
    this.looks.push(session.me.id!);
    return (this.screen = await session.read<OrderScreen>(`/api/orders/${id}`));
  }

  /** Sends an action and answers whatever comes back; the screen stays as it was. */
  async attempt<A extends ActionName>(who: Who, action: A, on: string, input: Input<A>, more: { key?: string; version?: number; at?: string } = {}): Promise<Response> {
    const session = await this.as(who);
    return session.post(`/api/orders/${this.id}/actions/${action}`, { key: randomUUID(), version: this.screen.version, on, input, ...more });
  }

  async act<A extends ActionName>(who: Who, action: A, on: string, input: Input<A>): Promise<OrderScreen> {
    const answer = await this.attempt(who, action, on, input);
    if (answer.status !== 200) throw new Error(`${action}: ${answer.status} ${JSON.stringify(answer.body)}`);
    this.looks.push((await this.as(who)).me.id!);
    return (this.screen = answer.body as OrderScreen);
  }

  /** `as` makes another file of the film. */
  async upload(kind: 'png' | 'jpeg' | 'dicom' = 'png', as: (film: Buffer) => Buffer = (film) => film): Promise<string> {
    const session = await this.as('operator');
    const film = as(kind === 'dicom' ? aDicomFilm({ animalId: this.screen.dog.animalId, day: this.today }) : await aFilm(kind));
    const { body } = await session.upload(`/api/orders/${this.id}/images`, film, `film.${kind}`).expect(201);
    return (body as Uploaded).image;
  }

  /** A moment on the practice's clock, some days from the one that the dog is booked for. */
  at(daysOn: number, time: string): Date {
    return instantOf(addDays(this.slot.day, daysOn), time, this.house.zone);
  }

  /** To the time that the dog is booked for, if it has not passed. */
  async untilVisit(): Promise<void> {
    const slot = this.at(0, this.slot.start);
    if (slot > this.server.clock.now()) await this.server.until(slot);
  }
}
