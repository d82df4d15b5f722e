import { instantOf } from '../record/local-time.js';
import { StepError } from '../record/step-error.js';
import type { Tx } from '#libs/platform/database/db';

export interface SlotAsked {
  day: string; start: string; minutes: number;
  room: string; operator: string; nurse: string; vet: string;
}

/**
 * Occupies everything that a visit needs. The exclusion constraint decides, not a look beforehand:
 * of two desks that press at once, one gets the slot and the other a sentence.
 */
export async function holdSlot(tx: Tx, where: { practice: string; order: string; visit: string; zone: string }, slot: SlotAsked): Promise<void> {
  const from = instantOf(slot.day, slot.start, where.zone);
  const until = new Date(from.getTime() + slot.minutes * 60_000);
  const kinds = new Map<string, string>();
  for (const kind of ['room', 'operator', 'nurse', 'vet'] as const) if (!kinds.has(slot[kind])) kinds.set(slot[kind], kind);
  await tx.$executeRaw`DELETE FROM slot WHERE visit_id = ${where.visit}::uuid`;
  try {
    for (const [resource, kind] of kinds)
      await tx.$executeRaw`INSERT INTO slot (practice_id, visit_id, order_id, kind, resource_id, period)
        VALUES (${where.practice}::uuid, ${where.visit}::uuid, ${where.order}::uuid, ${kind}, ${resource}::uuid, tstzrange(${from}, ${until}))`;
  } catch (error) {
    if (/slot_apart|23P01/.test(String((error as Error).message) + JSON.stringify((error as { meta?: unknown }).meta ?? {}))) throw new StepError('SLOT_TAKEN');
    throw error;
  }
}

export async function freeSlot(tx: Tx, visit: string): Promise<void> {
  await tx.$executeRaw`DELETE FROM slot WHERE visit_id = ${visit}::uuid`;
}
