import type { Evaluation, Hold } from '#libs/pathway/evaluation';
import { holdSentence } from '#libs/pathway/words';
import { nameAtDesk } from '#libs/science/protocols/catalogue';
import { say } from '../messages/say.js';
import { dayWords } from '../record/day-words.js';
import type { Work } from '../record/work.js';

/** What a night's look newly holds is mailed to the practice of the visit: nobody opens an order that seemed settled. */
export async function tellDesk(work: Work, before: Evaluation): Promise<void> {
  const { tx, order, evaluation, now } = work;
  const known = new Set(holdsOf(before).map(keyOf));
  const fresh = holdsOf(evaluation).filter((h) => !known.has(keyOf(h)));
  const visit = Object.values(evaluation.visits).find((v) => v.step === 'booked');
  if (fresh.length === 0 || !visit?.day) return;
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { callName: true } });
  const desk = await tx.practice.findUniqueOrThrow({ where: { id: visit.where ?? order.practice }, select: { name: true, email: true } });
  const names = Object.fromEntries(Object.values(evaluation.studies).map((s) => [s.id, nameAtDesk(s)]));
  await say(tx, {
    once: `ahead:${visit.id}:${now.toISOString()}`, kind: 'lookAhead', template: 'lookAhead', order: order.id, practice: order.practice, to: desk,
    data: { accession: order.accession, dog: dog.callName, dayWords: dayWords(visit.day), holds: fresh.map((h) => holdSentence(h, { names })) },
  });
}

/** Holds of the register's making: those that wait for an answer of a person are older than this night. */
const holdsOf = (e: Evaluation): Hold[] =>
  [...Object.values(e.visits), ...Object.values(e.studies)].flatMap((s) => s.holds).filter((h) => h.code === 'NOT_FIT' || h.code === 'PROTOCOL_CHANGED');

const keyOf = (h: Hold): string => `${h.code} ${h.on.id} ${JSON.stringify(h.detail ?? {})}`;
