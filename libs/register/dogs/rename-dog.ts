import type { z } from 'zod';
import { renameDog as contract, type Dog } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { asDate, parseInput, pastDay } from '../parse-input.js';
import { practiceDay } from '../practice-day.js';
import { badInput } from '../refusal.js';
import { staffOnly } from '../who-may.js';
import { dogIn, ownDog } from './dog-in.js';

/** Another name from a day on; the earlier ones stay with their days. */
export async function renameDog(deps: RegisterDeps, actor: Actor, dog: string, input: z.input<typeof contract>): Promise<Dog> {
  staffOnly(actor);
  const wanted = parseInput(contract, input);
  return deps.db.practice(actor.practice, async (tx) => {
    await ownDog(tx, actor, dog);
    const from = asDate(pastDay('from', wanted.from, await practiceDay(tx, actor, deps.clock.now())));
    const [current] = await tx.dogName.findMany({ where: { dogId: dog }, orderBy: { from: 'desc' }, take: 1 });
    if (current && from <= current.from) throw badInput('from', t('The name in the record, {current}, is from {slice}. The new name starts on a later day.', { current: current.name, slice: current.from.toISOString().slice(0, 10) }));
    await tx.dogName.create({ data: { practiceId: actor.practice, dogId: dog, name: wanted.name, latinName: wanted.latinName ?? null, from } });
    await noteChange(tx, actor, 'renameDog', dog);
    return dogIn(tx, dog);
  });
}
