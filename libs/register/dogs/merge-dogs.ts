import type { z } from 'zod';
import { mergeDogs as contract } from '#libs/contracts/people';
import type { Dog } from '#libs/contracts/register';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { knownId, parseInput } from '../parse-input.js';
import { badInput, StepError } from '../refusal.js';
import type { Restate } from './add-identifier.js';
import { dogIn, ownDog } from './dog-in.js';
import { TWIN_PAIRS } from './twin-sql.js';

/**
 * One dog that was entered twice becomes one: the orders, names, numbers and people of the second entry go to the
 * first. No paper changes its number, and the second animal number finds the dog for ever.
 */
export async function mergeDogs(deps: RegisterDeps, actor: Actor, kept: string, input: z.input<typeof contract>, restate: Restate): Promise<Dog> {
  const { gone, why } = parseInput(contract, input);
  if (gone === kept) throw badInput('gone', t('This is the same entry. Choose the other one.'));
  return deps.db.practice(actor.practice, async (tx) => {
    // Always in one order, so that two desks cannot wait for each other.
    for (const dog of [knownId(kept), knownId(gone)].sort()) await ownDog(tx, actor, dog);
    if (!actor.roles.some((r) => r === 'manager' || r === 'desk')) throw new StepError('NOT_YOUR_ROLE', t('The desk or the practice manager merges two entries of one dog.'));
    await refuseStrangers(tx, actor, kept, gone);
    const { animalId, callName } = await tx.dog.findUniqueOrThrow({ where: { id: gone }, select: { animalId: true, callName: true } });
    await moveNames(tx, actor, kept, gone, callName);
    await moveNumbers(tx, kept, gone);
    await tx.$executeRaw`UPDATE dog_role r SET dog_id = ${kept}::uuid WHERE r.dog_id = ${gone}::uuid
      AND NOT EXISTS (SELECT 1 FROM dog_role k WHERE k.dog_id = ${kept}::uuid AND k.person_id = r.person_id AND k.role = r.role AND k.valid_until IS NOT DISTINCT FROM r.valid_until)`;
    await tx.authority.updateMany({ where: { dogId: gone }, data: { dogId: kept } });
    await tx.dog.updateMany({ where: { sireId: gone }, data: { sireId: kept } });
    await tx.dog.updateMany({ where: { damId: gone }, data: { damId: kept } });
    await tx.$executeRaw`UPDATE dog k SET died = COALESCE(k.died, g.died) FROM dog g WHERE k.id = ${kept}::uuid AND g.id = ${gone}::uuid`;
    await tx.$executeRaw`UPDATE orders SET dog_id = ${kept}::uuid WHERE dog_id = ${gone}::uuid`;
    await tx.dogMerge.updateMany({ where: { keptId: gone }, data: { keptId: kept } });
    await tx.dogMerge.create({ data: { goneId: gone, keptId: kept, practiceId: actor.practice, animalId, why, by: actor.id, byName: actor.name, at: deps.clock.now() } });
    await noteChange(tx, actor, 'mergeDogs', kept, { gone, animalId, why });
    await restate(tx, kept);
    return dogIn(tx, kept);
  });
}

/** Only entries that look like one dog are merged: two dogs in one record cannot be told apart again. */
async function refuseStrangers(tx: Tx, actor: Actor, kept: string, gone: string): Promise<void> {
  const merged = await tx.dogMerge.findFirst({ where: { goneId: { in: [kept, gone] } }, select: { animalId: true } });
  if (merged) throw new StepError('ALREADY_THERE', t('The entry {animalId} was merged already.', { animalId: merged.animalId }));
  const pairs = await tx.$queryRawUnsafe<{ a: string }[]>(`SELECT t.a FROM (${TWIN_PAIRS}) t WHERE t.a IN ($2::uuid, $3::uuid) AND t.b IN ($2::uuid, $3::uuid)`, actor.practice, kept, gone);
  if (pairs.length === 0) throw badInput('gone', t('These two share neither a number nor a name with a birth, or differ in sex. Look again; if they are one dog, correct the wrong entry first.'));
}

/** Its names become earlier names; what the dog is called now does not change. */
async function moveNames(tx: Tx, actor: Actor, kept: string, gone: string, callName: string): Promise<void> {
  await tx.$executeRaw`UPDATE dog_name n SET dog_id = ${kept}::uuid, valid_from = LEAST(n.valid_from, (SELECT max(k.valid_from) FROM dog_name k WHERE k.dog_id = ${kept}::uuid) - 1)
    WHERE n.dog_id = ${gone}::uuid AND NOT EXISTS (SELECT 1 FROM dog_name k WHERE k.dog_id = ${kept}::uuid AND lower(k.name) = lower(n.name))`;
  await tx.$executeRaw`INSERT INTO dog_name (practice_id, dog_id, name, valid_from)
    SELECT ${actor.practice}::uuid, ${kept}::uuid, ${callName}, (SELECT max(valid_from) - 1 FROM dog_name WHERE dog_id = ${kept}::uuid)
    WHERE lower(${callName}) <> (SELECT lower(call_name) FROM dog WHERE id = ${kept}::uuid) AND NOT EXISTS (SELECT 1 FROM dog_name k WHERE k.dog_id = ${kept}::uuid AND lower(k.name) = lower(${callName}))`;
}

async function moveNumbers(tx: Tx, kept: string, gone: string): Promise<void> {
  await tx.$executeRaw`UPDATE dog_identifier i SET dog_id = ${kept}::uuid WHERE i.dog_id = ${gone}::uuid AND i.kind <> 'none'
    AND NOT EXISTS (SELECT 1 FROM dog_identifier k WHERE k.dog_id = ${kept}::uuid AND k.kind = i.kind AND k.value = i.value AND k.valid_until IS NOT DISTINCT FROM i.valid_until)`;
  await tx.$executeRaw`UPDATE stud_book_number b SET dog_id = ${kept}::uuid WHERE b.dog_id = ${gone}::uuid AND NOT EXISTS (SELECT 1 FROM stud_book_number k WHERE k.dog_id = ${kept}::uuid AND k.book = b.book AND k.number = b.number)`;
}
