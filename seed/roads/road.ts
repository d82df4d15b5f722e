import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import type { actionInputs, ActionName } from '#libs/contracts/actions/all';
import type { Evaluation } from '#libs/pathway/evaluation';
import type { Fact, FactType } from '#libs/pathway/facts';
import type { TestClock } from '#libs/platform/clock/test-clock';
import type { Db } from '#libs/platform/database/db';
import type { FileStore } from '#libs/platform/files/file-store';
import { act } from '#libs/steps/act';
import { queueActor, type Actor } from '#libs/steps/record/actor';
import { append } from '#libs/steps/record/append';
import { lockOrder } from '#libs/steps/record/order-record';
import { workOn, type Stated, type Work } from '#libs/steps/record/work';
import type { DemoDog, DemoScheme, House, Lane } from '../demo-scheme.js';
import type { FilmRoom } from '../films.js';
import { datePost } from './date-post.js';

/** What every road is driven with. */
export interface Driver {
  db: Db;
  files: FileStore;
  films: FilmRoom;
  scheme: DemoScheme;
  publicUrl: string;
}

/** One order on its way, with a clock of its own, and what it looked like after the last action. */
export interface Road {
  driver: Driver;
  clock: TestClock;
  dog: DemoDog;
  house: House;
  lane: Lane;
  order: string;
  accession: string;
  visit: string;
  evaluation: Evaluation;
  facts: Fact[];
  version: number;
  /** Messages whose time of writing has been set. */
  dated: string[];
}

type Input<A extends ActionName> = z.input<(typeof actionInputs)[A]>;

const lookAt = (work: Work) => ({ evaluation: work.evaluation, facts: work.order.facts as Fact[], version: work.order.version });

const WRITES_MAIL: ReadonlySet<ActionName> = new Set<ActionName>(['book', 'giveSheet', 'send', 'releaseLetter', 'releaseAgain', 'releaseCorrection', 'releaseFilmsRejected', 'cancelVisit']);

/** Does what a person does, by the one way in which a person changes an order. */
export async function perform<A extends ActionName>(road: Road, actor: Actor, action: A, on: string, input: Input<A>): Promise<void> {
  const { driver: { db, publicUrl }, clock, order, version } = road;
  const request = { key: randomUUID(), version, on, input: input as Record<string, unknown> };
  Object.assign(road, await act({ db, clock, publicUrl }, actor, order, action, request, async (work) => lookAt(work)));
  if (WRITES_MAIL.has(action)) await datePost(road);
}

/** States what the program itself reports: outcomes of sending, reminders, closures. */
export async function report(road: Road, action: string, stated: Stated[]): Promise<void> {
  const { driver: { db, publicUrl }, clock, house, order } = road;
  const after = await db.practice(house.id, async (tx) => {
    const work = workOn(tx, clock.now(), queueActor(house.id), (await lockOrder(tx, order))!, publicUrl);
    await append(work, stated, { action, role: 'queue' });
    return lookAt(work);
  });
  Object.assign(road, after);
}

export const factsOf = <T extends FactType>(road: Road, type: T): Extract<Fact, { type: T }>[] => road.facts.filter((f): f is Extract<Fact, { type: T }> => f.type === type);

/** The study of a protocol; the order's only one when none is named. */
export function studyOf(road: Road, protocol?: string): string {
  const study = Object.values(road.evaluation.studies).find((s) => !protocol || s.protocol === protocol);
  if (!study) throw new Error(`${road.dog.call} has no study ${protocol ?? ''}.`);
  return study.id;
}

/** The owner behind the emailed link. */
export const ownerOf = ({ dog, house }: Road): Actor => ({ id: dog.person.id, name: dog.person.name, roles: ['owner'], practice: house.id });

/** Forward by days, and on to Monday from a free weekend. */
export function laterDays({ clock }: Road, days: number): void {
  clock.advance({ days });
  while ([0, 6].includes(clock.now().getUTCDay())) clock.advance({ days: 1 });
}
