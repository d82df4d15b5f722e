import type { z } from 'zod';
import { newPerson, type Person } from '#libs/contracts/register';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { parseInput } from '../parse-input.js';
import { staffOnly } from '../who-may.js';
import { insertPerson } from './write-person.js';

/** Two people may have one name: whether somebody is known already, the desk sees in the list. */
export async function createPerson(deps: RegisterDeps, actor: Actor, input: z.input<typeof newPerson>): Promise<Person> {
  staffOnly(actor);
  const wanted = parseInput(newPerson, input);
  return deps.db.practice(actor.practice, async (tx) => {
    const { id } = await insertPerson(tx, actor, wanted, '');
    await noteChange(tx, actor, 'createPerson', id);
    return { ...wanted, id };
  });
}
