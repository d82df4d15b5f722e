import { addDays } from '#libs/pathway/days';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { dayWords } from '../record/day-words.js';
import { instantOf } from '../record/local-time.js';
import type { Work } from '../record/work.js';
import { sayToOwners } from '../messages/say-to-owner.js';

/** Confirmation now, with calendar file, advice and the link; a reminder two days before, with one-tap answers. */
export async function sayBooked(work: Work, visit: string, advice: string | undefined, moved: boolean): Promise<void> {
  const { tx, order } = work;
  const booked = work.facts('visitBooked').filter((f) => f.visit === visit);
  const last = booked.at(-1);
  if (!last) return;
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { callName: true } });
  const text = advice ? await tx.approvedText.findFirst({ where: { id: advice, kind: 'advice' } }) : null;
  const by = text ? await tx.staff.findUnique({ where: { id: text.approvedBy }, select: { name: true } }) : null;
  const studies = Object.values(work.evaluation.studies).map((s) => findProtocol(s.protocol, s.version)?.deskName ?? s.protocol);
  const zone = order.rules.practices[last.where]?.zone ?? 'UTC';
  const data = {
    dog: dog.callName, visit, day: last.day, dayWords: dayWords(last.day), start: last.start, studies, moved, zone,
    minutes: last.detail?.minutes ?? 45, sequence: booked.length - 1, ...(text ? { advice: text.body, adviceBy: by?.name ?? '' } : {}),
  };
  const turn = `${visit}:${booked.length}`;
  await sayToOwners(work, { once: `confirmation:${turn}`, kind: 'confirmation', template: 'confirmation', data, subject: visit });
  const when = instantOf(addDays(last.day, -2), '10:00', zone);
  // A moved visit is reminded of once: the reminder of the earlier day finds that day gone and is dropped.
  if (when > work.now) await sayToOwners(work, { once: `reminder:${turn}`, kind: 'reminder', template: 'reminder', data, subject: visit, notBefore: when });
}
