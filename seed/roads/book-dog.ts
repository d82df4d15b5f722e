import { randomUUID } from 'node:crypto';
import type { Answer, Question } from '#libs/contracts/common';
import { questions } from '#libs/contracts/common';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { createBooking } from '#libs/steps/booking/create-booking';
import { estimateOf } from '#libs/steps/booking/estimate-of';
import { readOrder } from '#libs/steps/record/order-record';
import { workOn } from '#libs/steps/record/work';
import type { CentreKey } from '../centre.js';
import type { DemoDog, Lane } from '../demo-scheme.js';
import { PacedClock } from './paced-clock.js';
import type { Driver, Road } from './road.js';

export interface Booking {
  dog: DemoDog;
  /** Protocol and centre of each study. */
  studies: [protocol: string, centre: CentreKey][];
  at: Date;
  slot: { day: string; start: string; minutes: number; lane: Lane };
  answers?: Partial<Record<Question, Answer>>;
  /** Whether the price was agreed to at once, on the phone. */
  accepted?: boolean;
  /** How fast time goes on this road; 1 as in life. */
  pace?: number;
}

export const allNo = Object.fromEntries(questions.map((q) => [q, 'no'])) as Record<Question, Answer>;

/** The desk books a dog in. */
export async function bookDog(driver: Driver, booking: Booking): Promise<Road> {
  const { dog, slot: { lane, ...slot } } = booking;
  const { house } = dog;
  const clock = new PacedClock(booking.at, booking.pace);
  const chosen = booking.studies.map(([protocol, centre]) => ({ protocol, version: versionOf(protocol), centre: driver.scheme.centres[centre] }));
  const { total } = estimateOf({ prices: house.prices, studies: chosen });
  const { order, accession } = await createBooking({ db: driver.db, clock, publicUrl: driver.publicUrl }, house.desk, {
    key: randomUUID(), dog: dog.id, payer: dog.person.id,
    studies: chosen.map((s) => ({ ...s, centre: s.centre.id })),
    slot: { ...slot, room: lane.room, operator: lane.operator.id, nurse: lane.nurse.id, vet: lane.vet.id },
    answers: { ...allNo, ...booking.answers }, answerNotes: {},
    addressees: [{ person: dog.person.id, channel: dog.person.channel }],
    ...(booking.accepted === false ? {} : { estimateAccepted: { by: dog.person.id, how: 'phone' } }),
    estimateTotalMinor: total.amountMinor,
    advice: dog.ageDays < 365 ? house.advice.young : house.advice.grown,
  });
  const work = await driver.db.practice(house.id, async (tx) => workOn(tx, clock.now(), house.desk, (await readOrder(tx, order))!, driver.publicUrl));
  const visit = Object.keys(work.evaluation.visits)[0]!;
  return { driver, clock, dog, house, lane, order, accession, visit, evaluation: work.evaluation, facts: work.order.facts, version: work.order.version, dated: [] };
}

function versionOf(protocol: string): string {
  const current = currentProtocols().find((p) => p.code === protocol);
  if (!current) throw new Error(`No protocol ${protocol}.`);
  return current.version;
}
