import type { Dog } from '#libs/contracts/register';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import { dogOfRow, type DogRow } from '../dog-of-row.js';
import { DOG } from '../dog-sql.js';
import { knownId } from '../parse-input.js';
import { notFound, StepError } from '../refusal.js';

/** The dog as it stands in this transaction. */
export async function dogIn(tx: Tx, dog: string): Promise<Dog> {
  const [row] = await tx.$queryRawUnsafe<{ dog: DogRow }[]>(`SELECT ${DOG} AS dog FROM dog d WHERE d.id = $1::uuid`, dog);
  if (!row) throw notFound();
  return dogOfRow(row.dog);
}

/** Holds the dog's row until the transaction ends. A dog that is only shared with this practice is changed at home. */
export async function ownDog(tx: Tx, actor: Actor, dog: string): Promise<string> {
  const seen = await tx.dog.findUnique({ where: { id: knownId(dog) }, select: { practiceId: true } });
  if (!seen) throw notFound();
  if (seen.practiceId !== actor.practice) throw new StepError('NOT_YOUR_ROLE', t('This dog is in the register of the practice that referred it. Ask them to change it.'));
  const merged = await tx.dogMerge.findUnique({ where: { goneId: dog }, select: { animalId: true } });
  if (merged) throw new StepError('ALREADY_THERE', t('The entry {animalId} was merged into another. Open the dog by its name or number.', { animalId: merged.animalId }));
  await tx.$executeRaw`SELECT 1 FROM dog WHERE id = ${dog}::uuid FOR UPDATE`;
  return dog;
}
