import { createHash, randomUUID } from 'node:crypto';
import type { DeliveryAnswer, ReadingAnswer } from '#libs/contracts/results-in';
import type { Tellable } from '#libs/words/said-error';
import { stored } from '#libs/words/stored';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import type { StepDeps } from '../record/step-deps.js';
import { StepError } from '../record/step-error.js';
import { answerOf, type Kept } from './answer-of.js';
import type { Bringer } from './bringer.js';
import { takeOne, type Taken } from './take-one.js';
import type { Read } from './stated.js';
import type { Signed } from './who-signed.js';

interface Claimed { id: string; hash: string; at: Date; answer: (Kept | ReadingAnswer)[] | null }

/**
 * A signed message: each reading goes to its order, or to the list of those that led nowhere. The same message under the
 * same key is answered as it was before; one that broke off half-way goes on, and takes nothing twice.
 */
export async function messageIn(deps: StepDeps, signed: Signed, way: 'message' | 'fhir', read: Read[]): Promise<DeliveryAnswer> {
  const bringer: Bringer = { id: signed.by, name: signed.name, role: 'centre', centre: signed.centre, way, actor: null };
  const hash = createHash('sha256').update(signed.body).digest('hex');
  const claimed = await deps.db.centre(signed.centre, (tx) => claim(tx, bringer, signed.key, hash, deps.clock.now()));
  if (claimed.hash !== hash) throw new StepError('ALREADY_THERE', 'Another message came under this idempotency key before. Give each message a key of its own. Nothing was changed.');
  if (claimed.answer) return { delivery: claimed.id, at: claimed.at.toISOString(), readings: claimed.answer.map(answerOf) };
  const all: { read: Read; taken: Taken }[] = [];
  for (const one of read) all.push({ read: one, taken: await takeOne(deps, bringer, one) });
  const kept = all.map(({ taken }) => taken.kept);
  await deps.db.centre(signed.centre, async (tx) => {
    for (const { read: { place, said }, taken: { kept: { outcome, told }, found } } of all) {
      if (outcome === 'notTaken') await leave(tx, claimed, bringer.centre, { place, said, told, order: found?.orderId ?? null });
    }
    await tx.$executeRaw`UPDATE result_delivery SET answer = ${JSON.stringify(kept)}::jsonb WHERE id = ${claimed.id}::uuid AND answer IS NULL`;
    await audit(tx, { by: bringer.id, role: bringer.role, action: 'bringReadings', subject: claimed.id, detail: { way, taken: kept.filter((r) => r.outcome === 'taken').length, of: kept.length } });
  });
  return { delivery: claimed.id, at: claimed.at.toISOString(), readings: kept.map(answerOf) };
}

async function claim(tx: Tx, { id, name, centre, way }: Bringer, key: string, hash: string, at: Date): Promise<Claimed> {
  await tx.$executeRaw`INSERT INTO result_delivery (id, centre_id, way, key, hash, at, by, by_name) VALUES (${randomUUID()}::uuid, ${centre}::uuid, ${way}, ${key}, ${hash}, ${at}, ${id}, ${name}) ON CONFLICT DO NOTHING`;
  const [row] = await tx.$queryRaw<Claimed[]>`SELECT id, hash, at, answer FROM result_delivery WHERE centre_id = ${centre}::uuid AND key = ${key}`;
  return row!;
}

async function leave(tx: Tx, { id, at }: Claimed, centre: string, { place, said, told, order }: { place: number; said: unknown; told: Tellable[]; order: string | null }): Promise<void> {
  const { words, sentences } = stored(told);
  await tx.$executeRaw`INSERT INTO result_left (delivery_id, place, centre_id, order_id, said, words, sentences, at)
    VALUES (${id}::uuid, ${place}, ${centre}::uuid, ${order}::uuid, ${JSON.stringify(said)}::jsonb, ${words}, ${sentences}::jsonb, ${at}) ON CONFLICT DO NOTHING`;
}
