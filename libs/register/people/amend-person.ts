import type { z } from 'zod';
import { newPerson, type Person } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { knownId, parseInput } from '../parse-input.js';
import { notFound, StepError } from '../refusal.js';
import { staffOnly } from '../who-may.js';
import { personColumns, reachable } from './write-person.js';

/** How somebody is reached from now on. Papers and facts keep the name of their day. */
export async function amendPerson(deps: RegisterDeps, actor: Actor, person: string, input: z.input<typeof newPerson>): Promise<Person> {
  staffOnly(actor);
  const wanted = parseInput(newPerson, input);
  return deps.db.practice(actor.practice, async (tx) => {
    const before = await tx.person.findFirst({ where: { id: knownId(person), practiceId: actor.practice } });
    if (!before) throw notFound();
    reachable(wanted, '');
    if (before.erasedAt) throw new StepError('NOT_AT_THIS_STEP', t('What was known of this person has been erased. Enter the person anew.'));
    const after = personColumns(wanted);
    await tx.person.update({ where: { id: person }, data: after, select: { id: true } });
    const fields = (Object.keys(after) as (keyof typeof after)[]).filter((field) => before[field] !== after[field]);
    await noteChange(tx, actor, 'amendPerson', person, { fields });
    return { ...wanted, id: person };
  });
}
