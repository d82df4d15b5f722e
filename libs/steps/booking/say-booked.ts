import { addDays } from '#libs/pathway/days';
import { nameAtDesk } from '#libs/science/protocols/catalogue';
import { instantOf } from '../record/local-time.js';
import type { Stated, Work } from '../record/work.js';
import { sayToOwners } from '../messages/say-to-owner.js';

type Booked = Extract<Stated, { type: 'visitBooked' }>;

/** Confirmation now, with calendar file, advice and the link; a reminder two days before, with one-tap answers. Moving is told as moving. */
export async function sayBooked(work: Work, booked: Booked, turn: number, people?: string[]): Promise<void> {
  const data = await visitMail(work, booked, turn);
  await sayToOwners(work, { once: `confirmation:${booked.visit}:${turn}`, kind: 'confirmation', template: 'confirmation', data, subject: booked.visit, ...(people ? { people } : {}) });
  await remind(work, booked, turn, data);
}

/** The reminder alone, where the confirmation went another way. */
export async function remindOfVisit(work: Work, booked: Booked, turn: number): Promise<void> {
  await remind(work, booked, turn, await visitMail(work, booked, turn));
}

/** What mails say about a visit. */
export async function visitMail({ tx, order, evaluation }: Work, booked: Booked, turn: number) {
  const { visit, day, start } = booked;
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { callName: true } });
  const advice = booked.detail?.advice as string | undefined;
  const text = advice ? await tx.approvedText.findFirst({ where: { id: advice, kind: 'advice' } }) : null;
  const by = text ? await tx.staff.findUnique({ where: { id: text.approvedBy }, select: { name: true } }) : null;
  const studies = (evaluation.visits[visit]?.studies ?? []).flatMap((id) => evaluation.studies[id] ?? []).map(nameAtDesk);
  return {
    dog: dog.callName, visit, day, start, studies, moved: turn > 1, zone: zoneOf(order, booked),
    minutes: (booked.detail?.minutes as number | undefined) ?? 45, sequence: turn - 1, ...(text ? { advice: text.body, adviceBy: by?.name ?? '' } : {}),
  };
}

const zoneOf = (order: Work['order'], { where }: Booked): string => order.rules.practices[where]?.zone ?? 'UTC';

async function remind(work: Work, booked: Booked, turn: number, data: Record<string, unknown>): Promise<void> {
  const when = instantOf(addDays(booked.day, -2), '10:00', zoneOf(work.order, booked));
  // A moved visit is reminded of once: the reminder of the earlier time finds that time gone and is dropped.
  if (when > work.now) await sayToOwners(work, { once: `reminder:${booked.visit}:${turn}`, kind: 'reminder', template: 'reminder', data, subject: booked.visit, notBefore: when });
}
