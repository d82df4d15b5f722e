import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import { shown } from '../dog-of-row.js';
import { oneAtATime } from '../one-at-a-time.js';
import { StepError } from '../refusal.js';
import type { CheckedIdentifier } from './checked-identifier.js';

interface Holder { id: string; callName: string; animalId: string; until: string | null }

/** No two dogs carry one transponder, not even one after the other: a number already known means a wrong dog or a wrong digit. */
export async function refuseKnownNumber(tx: Tx, actor: Actor, { kind, value }: CheckedIdentifier, path: string, dog?: string): Promise<void> {
  if (kind !== 'transponder' && kind !== 'olderTransponder') return;
  await oneAtATime(tx, actor.practice, `transponder ${value}`);
  const holders = await tx.$queryRaw<Holder[]>`
    SELECT d.id, d.call_name AS "callName", d.animal_id AS "animalId", i.valid_until::text AS until FROM dog_identifier i JOIN dog d ON d.id = i.dog_id
    WHERE i.practice_id = ${actor.practice}::uuid AND i.value = ${value} AND i.kind IN ('transponder', 'olderTransponder')`;
  const holder = holders.find((h) => h.id !== dog) ?? holders.find((h) => h.until === null);
  if (!holder) return;
  const whose = holder.id === dog ? t('this dog already') : t('{callName} ({animalId}) already. Open that dog, or read the number once more', { callName: holder.callName, animalId: holder.animalId });
  const message = t('{kind} belongs to {whose}.', { kind: shown(kind, value), whose });
  throw new StepError('ALREADY_THERE', message, { fields: [{ path, message }] });
}
