import { addDays } from '#libs/pathway/days';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { dayWords } from '../record/day-words.js';
import { instantOf } from '../record/local-time.js';
import type { Stated, Work } from '../record/work.js';
import { sayToOwners } from '../messages/say-to-owner.js';

type Booked = Extract<Stated, { type: 'visitBooked' }>;

/** Confirmation now, with calendar file, advice and the link; a reminder two days before, with one-tap answers. Moving is told as moving. */
export async function sayBooked(work: Work, booked: Booked, turn: number): Promise<void> {
  const { tx, order, evaluation } = work;
  const { visit, day, start } = booked;
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { callName: true } });
  const advice = booked.detail?.advice as string | undefined;
  const text = advice ? await tx.approvedText.findFirst({ where: { id: advice, kind: 'advice' } }) : null;
  const by = text ? await tx.staff.findUnique({ where: { id: text.approvedBy }, select: { name: true } }) : null;
  const studies = (evaluation.visits[visit]?.studies ?? []).flatMap((id) => evaluation.studies[id] ?? []).map((s) => findProtocol(s.protocol, s.version)?.deskName ?? s.protocol);
  const zone = order.rules.practices[booked.where]?.zone ?? 'UTC';
  const data = {
    dog: dog.callName, visit, day, dayWords: dayWords(day), start, studies, moved: turn > 1, zone,
    minutes: booked.detail?.minutes ?? 45, sequence: turn - 1, ...(text ? { advice: text.body, adviceBy: by?.name ?? '' } : {}),
  };
  const once = `${visit}:${turn}`;
  await sayToOwners(work, { once: `confirmation:${once}`, kind: 'confirmation', template: 'confirmation', data, subject: visit });
  const when = instantOf(addDays(day, -2), '10:00', zone);
  // A moved visit is reminded of once: the reminder of the earlier time finds that time gone and is dropped.
  if (when > work.now) await sayToOwners(work, { once: `reminder:${once}`, kind: 'reminder', template: 'reminder', data, subject: visit, notBefore: when });
}
