import type { z } from 'zod';
import { addPersonRole as contract, type Dog } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { asDate, existingDay, parseInput, pastDay } from '../parse-input.js';
import { ownPerson } from '../people/write-person.js';
import { practiceDay } from '../practice-day.js';
import { badInput, StepError } from '../refusal.js';
import { staffOnly } from '../who-may.js';
import { dogIn, ownDog } from './dog-in.js';

/** Who somebody is to the dog, from a day on or from one day to another. A role that stands is ended by naming its last day. */
export async function addPersonRole(deps: RegisterDeps, actor: Actor, dog: string, input: z.input<typeof contract>): Promise<Dog> {
  staffOnly(actor);
  const wanted = parseInput(contract, input);
  return deps.db.practice(actor.practice, async (tx) => {
    await ownDog(tx, actor, dog);
    const from = pastDay('from', wanted.from, await practiceDay(tx, actor, deps.clock.now()));
    const until = wanted.until === undefined ? null : existingDay('until', wanted.until);
    if (until !== null && until < from) throw badInput('until', t('The last day lies before the first one.'));
    const person = await ownPerson(tx, actor, wanted.person, 'person');
    const role = { dogId: dog, personId: person.id, role: wanted.role };
    const standing = await tx.dogRole.findFirst({ where: { ...role, until: null } });
    if (!standing) await tx.dogRole.create({ data: { ...role, practiceId: actor.practice, from: asDate(from), until: until && asDate(until) } });
    else if (until === null) throw new StepError('ALREADY_THERE', t('{person} is that to this dog already. To end it, name its last day.', { person: person.name }));
    else if (asDate(until) < standing.from) throw badInput('until', t('It stands since {slice}; the last day lies before that.', { slice: standing.from.toISOString().slice(0, 10) }));
    else await tx.dogRole.update({ where: { id: standing.id }, data: { until: asDate(until) } });
    await noteChange(tx, actor, until ? 'endPersonRole' : 'addPersonRole', dog, { person: person.id, role: wanted.role });
    return dogIn(tx, dog);
  });
}
