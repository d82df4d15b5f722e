import { randomUUID } from 'node:crypto';
import type { NewBooking } from '#libs/contracts/booking';
import type { Prices } from '#libs/contracts/register';
import { nextAccession } from '#libs/science/identifiers/accession';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import { append } from '../record/append.js';
import { readOrder, type OrderRecord } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { personName } from '../record/person-name.js';
import { badInput, StepError } from '../record/step-error.js';
import { workOn, type Stated, type Work } from '../record/work.js';
import { estimateOf } from './estimate-of.js';
import { findFitness } from './find-fitness.js';
import { holdSlot } from './hold-slot.js';
import { refuseWhileClosing } from '../closing/refuse-while-closing.js';
import { signersAsBefore } from '../order/name-signers.js';
import { answersNotAsked } from './questions-for.js';
import { refuseRestricted } from './refuse-restricted.js';
import { refuseWhatCannotBe } from './refuse-what-cannot-be.js';
import { sayBooked } from './say-booked.js';
import { slotNames } from './slot-names.js';

/** One call books everything or nothing. The same key again answers with the same order. */
export async function createBooking(deps: StepDeps, actor: Actor, input: NewBooking): Promise<{ order: string; accession: string }> {
  return deps.db.practice(actor.practice, async (tx) => {
    const known = await tx.order.findUnique({ where: { id: input.key }, select: { id: true, accession: true } });
    if (known) return { order: known.id, accession: known.accession };
    const work = await openBooking(tx, deps, actor, input);
    await sayBooked(work, work.facts('visitBooked').at(-1)!, 1);
    return { order: work.order.id, accession: work.order.accession };
  });
}

/** The order with its first visit; nobody is told yet. */
export async function openBooking(tx: Tx, deps: StepDeps, actor: Actor, input: NewBooking): Promise<Work> {
  const order = await openOrder(tx, deps.clock.now(), actor, input);
  const work = workOn(tx, deps.clock.now(), actor, order, deps.publicUrl);
  await bookFirstVisit(work, input);
  return work;
}

async function openOrder(tx: Tx, now: Date, actor: Actor, input: NewBooking): Promise<OrderRecord> {
  const dog = await tx.dog.findFirst({ where: { id: input.dog, practiceId: actor.practice }, select: { id: true } });
  if (!dog) throw badInput('dog', t('This dog is not in your register.'));
  const practice = await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { letters: true, nextNumber: true, policy: true } });
  refuseWhileClosing(practice.policy);
  await refuseRestricted(tx, input.dog, [input.payer, ...input.addressees.map((a) => a.person)]);
  const accession = nextAccession(practice.letters, now.getUTCFullYear(), practice.nextNumber - 1);
  // Two desks at once: the second waits here and takes the next number.
  const claimed = await tx.practice.updateMany({ where: { id: actor.practice, nextNumber: practice.nextNumber }, data: { nextNumber: accession.number + 1 } });
  if (claimed.count === 0) throw new StepError('CHANGED_MEANWHILE', t('Another booking was made at the same moment. Press again.'));
  await tx.$executeRaw`INSERT INTO orders (id, practice_id, accession, dog_id) VALUES (${input.key}::uuid, ${actor.practice}::uuid, ${accession.text}, ${input.dog}::uuid)`;
  const order = await readOrder(tx, input.key);
  if (!order) throw new StepError('NOT_FOUND');
  return order;
}

async function bookFirstVisit(work: Work, input: NewBooking): Promise<void> {
  const { tx, actor, order } = work;
  const visit = randomUUID();
  const studies = input.studies.map((s) => ({ ...s, id: randomUUID() }));
  for (const s of studies) checkStudy(order, s);
  const stated = await statements(work, input, visit, studies);
  // The dry run: what would stand in the way of this booking refuses it, before anything is stored.
  refuseWhatCannotBe(work, stated);
  await holdSlot(tx, { practice: actor.practice, order: order.id, visit, zone: order.rules.practices[actor.practice]!.zone }, input.slot);
  await append(work, stated, { action: 'book', role: 'desk' });
}

function checkStudy(order: OrderRecord, s: { protocol: string; version: string; centre: string }): void {
  if (!findProtocol(s.protocol, s.version)) throw badInput('studies', t('This study is not installed in that version. Reload the page.'));
  if (!order.centres[s.centre]?.protocols.includes(s.protocol)) throw badInput('studies', t('This centre does not read this study. Choose another centre.'));
}

async function statements(work: Work, input: NewBooking, visit: string, studies: { id: string; protocol: string; version: string; centre: string }[]): Promise<Stated[]> {
  const { tx, actor, order } = work;
  const practice = await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { prices: true } });
  const estimate = estimateOf({ prices: practice.prices as Prices, studies: studies.map((s) => ({ ...s, centre: order.centres[s.centre]! })) });
  if (estimate.total.amountMinor !== input.estimateTotalMinor) throw new StepError('CHANGED_MEANWHILE', t('A price changed while you were booking. Look at the estimate again and read it out anew.'));
  const { slot } = input;
  const numbers = await tx.dogIdentifier.findMany({ where: { dogId: input.dog, kind: { not: 'none' }, until: null }, select: { value: true } });
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: input.dog }, select: { bornEarliest: true, bornLatest: true, bornPrecision: true, sex: true, neutered: true } });
  const names = await slotNames(tx, slot);
  const stated: Stated[] = [
    { type: 'orderOpened', order: order.id, dog: input.dog, birth: { date: day(dog.bornEarliest), precision: dog.bornPrecision as 'day', latest: day(dog.bornLatest) }, numbers: numbers.map((n) => n.value), addressees: input.addressees },
    ...studies.map((s): Stated => ({ type: 'studyAdded', study: s.id, protocol: s.protocol, version: s.version, centre: s.centre })),
    { type: 'payerNamed', payer: input.payer, detail: { name: await personName(work, input.payer) } },
    { type: 'visitOpened', visit, studies: studies.map((s) => s.id), why: 'first' },
    { type: 'visitBooked', visit, day: slot.day, start: slot.start, where: actor.practice, operator: slot.operator, room: slot.room, detail: { ...names, nurse: slot.nurse, vet: slot.vet, minutes: slot.minutes, estimate, ...(input.advice ? { advice: input.advice } : {}) } },
    { type: 'answersGiven', visit, stage: 'booking', answers: { ...input.answers, ...answersNotAsked(dog) }, detail: { notes: input.answerNotes } },
  ];
  if (input.estimateAccepted) stated.push({ type: 'estimateAccepted', visit, amountMinor: estimate.total.amountMinor, currency: estimate.total.currency, how: input.estimateAccepted.how, payer: input.estimateAccepted.by, detail: { name: await personName(work, input.estimateAccepted.by), lines: estimate.lines } });
  for (const s of studies) stated.push({ type: 'fitnessChecked', visit, study: s.id, problems: await findFitness(tx, { practice: actor.practice, dog: input.dog, order: order.id, protocol: s.protocol, version: s.version, day: slot.day, operator: slot.operator }) });
  stated.push(...(await signersAsBefore(work)));
  return stated;
}

const day = (d: Date): string => d.toISOString().slice(0, 10);
