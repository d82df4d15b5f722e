import { randomUUID } from 'node:crypto';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { Tx } from '#libs/platform/database/db';
import { sayToOwners } from '../messages/say-to-owner.js';
import { queueActor } from '../record/actor.js';
import { withOffset } from '../record/local-time.js';
import { readOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn, type Work } from '../record/work.js';
import { earlierTime } from './earlier-time.js';
import { OFFER_HOURS, type OfferedSlot, type WaitingRow } from './waiting-rows.js';

/** Free times go to those who wait, in the order in which they asked: one open offer each, and no time to two of them. */
export async function offerSlots(deps: StepDeps, practice: string): Promise<void> {
  const now = deps.clock.now();
  await deps.db.practice(practice, async (tx) => {
    // One at a time for a practice, or a time would be offered twice.
    await tx.$queryRaw`SELECT 1 FROM practice WHERE id = ${practice}::uuid FOR UPDATE`;
    await tx.$executeRaw`UPDATE slot_offer SET state = 'expired', answered_at = ${now} WHERE state = 'open' AND expires_at <= ${now}`;
    await tx.$executeRaw`UPDATE waiting_entry e SET state = 'left', done_at = ${now} FROM visit v WHERE v.id = e.visit_id AND e.state = 'waiting' AND v.step NOT IN ('wanted', 'booked')`;
    await tx.$executeRaw`UPDATE slot_offer o SET state = 'taken', answered_at = ${now} FROM waiting_entry e WHERE e.id = o.entry_id AND e.state <> 'waiting' AND o.state = 'open'`;
    const waiting = await tx.$queryRaw<WaitingRow[]>`SELECT id, order_id AS "orderId", visit_id AS "visitId", to_char(from_day, 'YYYY-MM-DD') AS "fromDay" FROM waiting_entry e
      WHERE state = 'waiting' AND NOT EXISTS (SELECT 1 FROM slot_offer o WHERE o.entry_id = e.id AND o.state = 'open') ORDER BY created_at, id`;
    for (const entry of waiting) await offerTo(tx, deps, practice, now, entry);
  });
}

async function offerTo(tx: Tx, deps: StepDeps, practice: string, now: Date, entry: WaitingRow): Promise<void> {
  await tx.$executeRaw`UPDATE waiting_entry SET looked_at = ${now} WHERE id = ${entry.id}::uuid`;
  const order = await readOrder(tx, entry.orderId);
  if (!order) return;
  const work = workOn(tx, now, queueActor(practice), order, deps.publicUrl);
  const open = await tx.$queryRaw<{ slot: OfferedSlot }[]>`SELECT slot FROM slot_offer WHERE state = 'open'`;
  const refused = await tx.$queryRaw<{ slot: OfferedSlot }[]>`SELECT slot FROM slot_offer WHERE entry_id = ${entry.id}::uuid`;
  const slot = await earlierTime(tx, work, entry, { practice, now, refused: refused.map((r) => r.slot), offered: open.map((o) => o.slot) });
  if (slot) await offer(work, entry, slot);
}

async function offer(work: Work, entry: WaitingRow, slot: OfferedSlot): Promise<void> {
  const { tx, now, order } = work;
  const [id, expires] = [randomUUID(), new Date(now.getTime() + OFFER_HOURS * 3_600_000)];
  await tx.slotOffer.create({ data: { id, practiceId: order.practice, entryId: entry.id, orderId: order.id, slot: { ...slot }, offeredAt: now, expiresAt: expires } });
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { callName: true } });
  const visit = work.evaluation.visits[entry.visitId];
  const local = withOffset(expires, order.rules.practices[order.practice]?.zone ?? 'UTC');
  const data = {
    visit: entry.visitId, dog: dog.callName, day: slot.day, start: slot.start, untilDay: local.slice(0, 10), untilTime: local.slice(11, 16),
    ...(visit?.day && visit.start ? { nowDay: visit.day, nowStart: visit.start } : {}),
  };
  await sayToOwners(work, { once: `offer:${id}`, kind: 'preparation', template: 'slotOffer', subject: entry.visitId, data });
  await addToOutbox(tx, 'offer-slots', { practice: order.practice }, { dedupe: id, notBefore: expires });
}

/** A time may have become free: whoever waits is asked after the commit. */
export const lookForTheWaiting = (tx: Tx, practice: string): Promise<void> => addToOutbox(tx, 'offer-slots', { practice });
