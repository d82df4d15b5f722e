import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import { newDog, type Dog } from '#libs/contracts/register';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { asDate, parseInput } from '../parse-input.js';
import { insertPerson, ownPerson } from '../people/write-person.js';
import { practiceDay } from '../practice-day.js';
import { staffOnly } from '../who-may.js';
import { checkedBirth } from './checked-birth.js';
import { checkedIdentifier } from './checked-identifier.js';
import { dogIn } from './dog-in.js';
import { newAnimalId } from './new-animal-id.js';
import { refuseKnownNumber } from './refuse-known-number.js';

type Wanted = z.output<typeof newDog>;

/** A dog with its owner, entered once. */
export async function createDog(deps: RegisterDeps, actor: Actor, input: z.input<typeof newDog>): Promise<Dog> {
  staffOnly(actor);
  const wanted = parseInput(newDog, input);
  return deps.db.practice(actor.practice, async (tx) => {
    const today = await practiceDay(tx, actor, deps.clock.now());
    const birth = checkedBirth(wanted.birth, today);
    const number = checkedIdentifier(wanted.identifier, 'identifier');
    await refuseKnownNumber(tx, actor, number, 'identifier.value');
    const id = randomUUID();
    const row = { practiceId: actor.practice, dogId: id };
    await tx.dog.create({
      data: {
        id, practiceId: actor.practice, animalId: newAnimalId(), callName: wanted.callName ?? wanted.name, breed: wanted.breed, sex: wanted.sex, neutered: wanted.neutered,
        bornEarliest: asDate(birth.earliest), bornLatest: asDate(birth.latest), bornPrecision: birth.precision, sireName: wanted.sireName ?? null, damName: wanted.damName ?? null,
      },
    });
    await tx.dogName.create({ data: { ...row, name: wanted.name, latinName: wanted.latinName ?? null, from: asDate(birth.latest) } });
    await tx.dogIdentifier.create({ data: { ...row, ...number, from: asDate(today) } });
    if (wanted.studBook.length > 0) await tx.studBookNumber.createMany({ data: wanted.studBook.map((entry) => ({ ...row, ...entry })) });
    const people = await peopleAround(tx, actor, wanted);
    await tx.dogRole.createMany({ data: people.map(({ person, role }) => ({ ...row, personId: person, role, from: asDate(role === 'breeder' ? birth.latest : today) })) });
    await noteChange(tx, actor, 'createDog', id);
    return dogIn(tx, id);
  });
}

async function peopleAround(tx: Tx, actor: Actor, { owner, breeder }: Wanted): Promise<{ person: string; role: 'owner' | 'breeder' }[]> {
  const known = 'person' in owner ? await ownPerson(tx, actor, owner.person, 'owner.person') : await insertPerson(tx, actor, owner.new, 'owner.new');
  if (breeder === undefined) return [{ person: known.id, role: 'owner' }];
  // Nobody writes to a breeder who is only a name.
  const bred = breeder === known.name ? known : await insertPerson(tx, actor, { name: breeder, channel: 'none', language: 'en' }, 'breeder');
  return [{ person: known.id, role: 'owner' }, { person: bred.id, role: 'breeder' }];
}
