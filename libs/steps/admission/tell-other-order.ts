import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import { workOn, type Work } from '../record/work.js';

/** The dog at this table may be another order's: then both orders say so, and neither is told the other's name. */
export async function tellOtherOrder(work: Work, numbers: string[]): Promise<void> {
  const { tx, order, now, actor } = work;
  if (numbers.length === 0) return;
  const others = await tx.$queryRaw<{ order_id: string; visit: string }[]>`
    SELECT v.order_id, v.id AS visit FROM dog_identifier i JOIN orders o ON o.dog_id = i.dog_id JOIN visit v ON v.order_id = o.id
    WHERE i.value = ANY(${numbers}) AND i.valid_until IS NULL AND v.open AND o.id <> ${order.id}::uuid AND o.dog_id <> ${order.dog}::uuid AND v.practice_id = ${actor.practice}::uuid`;
  for (const other of others) {
    const record = await lockOrder(tx, other.order_id);
    if (!record) continue;
    const there = workOn(tx, now, actor, record, work.publicUrl);
    await append(there, [{ type: 'ourDogSeenElsewhere', visit: other.visit }], { action: 'scanDog' });
  }
}
