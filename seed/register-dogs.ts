import { randomUUID } from 'node:crypto';
import type { Tx } from '#libs/platform/database/db';
import { localDay } from '#libs/pathway/zones';
import { newAnimalId } from '#libs/register/dogs/new-animal-id';
import { addDays } from '#libs/pathway/days';
import { studBookOf } from './breeds.js';
import { country } from './country.js';
import type { DemoDog, DemoScheme } from './demo-scheme.js';
import { dogs, transponderOf, type SeedDog } from './dogs.js';
import { owners, type SeedOwner } from './owners.js';

const date = (day: string): Date => new Date(`${day}T00:00:00Z`);

/** Earliest and latest day of birth; a month alone leaves both ends open. */
export function bornOf(dog: SeedDog, today: string): { earliest: string; latest: string; precision: 'day' | 'month' } {
  const day = addDays(today, -dog.ageDays);
  if (!dog.monthOnly) return { earliest: day, latest: day, precision: 'day' };
  const first = `${day.slice(0, 7)}-01`;
  const next = addDays(first, 31);
  return { earliest: first, latest: addDays(`${next.slice(0, 7)}-01`, -1), precision: 'month' };
}

/** People and dogs, each in the register of the practice that knows them. */
export async function registerDogs(tx: Tx, houses: DemoScheme['houses'], now: Date): Promise<DemoScheme['dogs']> {
  const today = localDay(now.toISOString(), country.zone);
  const people = new Map(owners.map((owner) => [owner.name, { ...owner, id: randomUUID(), house: houses[owner.practice] }]));
  await tx.person.createMany({
    data: [...people.values()].map((p) => ({ id: p.id, practiceId: p.house.id, name: p.name, email: p.mail, phone: p.phone, address: p.address, channel: p.channel ?? 'mail', language: p.language ?? 'en' })),
  });
  const known = dogs.map((dog): DemoDog => {
    const owner = people.get(dog.owner);
    if (!owner) throw new Error(`${dog.call} has an owner who is not in the list: ${dog.owner}.`);
    return { ...dog, id: randomUUID(), house: owner.house, transponder: transponderOf(dog), person: personOf(owner) };
  });
  await tx.dog.createMany({ data: known.map((dog) => dogRow(dog, today)) });
  const born = (dog: DemoDog) => date(bornOf(dog, today).latest);
  const row = (dog: DemoDog) => ({ practiceId: dog.house.id, dogId: dog.id });
  await tx.dogName.createMany({
    data: known.flatMap((dog) => [
      { ...row(dog), name: dog.formerly ?? dog.registered, from: born(dog) },
      ...(dog.formerly ? [{ ...row(dog), name: dog.registered, from: date(addDays(today, -90)) }] : []),
    ]),
  });
  await tx.dogIdentifier.createMany({ data: known.map((dog) => ({ ...row(dog), kind: 'transponder', value: dog.transponder, how: 'scanned', from: born(dog) })) });
  await tx.studBookNumber.createMany({ data: known.map((dog, i) => ({ ...row(dog), book: studBookOf(dog.breed), number: `${bornOf(dog, today).latest.slice(0, 4)}-${String(1100 + 7 * i)}` })) });
  await tx.dogRole.createMany({
    data: known.flatMap((dog) => [
      { ...row(dog), personId: people.get(dog.owner)!.id, role: 'owner', from: born(dog) },
      ...(dog.coOwner ? [{ ...row(dog), personId: people.get(dog.coOwner)!.id, role: 'coOwner', from: born(dog) }] : []),
      ...(dog.breeder ? [{ ...row(dog), personId: people.get(dog.breeder)!.id, role: 'breeder', from: born(dog) }] : []),
    ]),
  });
  return new Map(known.map((dog) => [dog.call, dog]));
}

const personOf = (owner: SeedOwner & { id: string }): DemoDog['person'] => ({ id: owner.id, name: owner.name, phone: owner.phone, channel: owner.channel ?? 'mail' });

function dogRow(dog: DemoDog, today: string) {
  const born = bornOf(dog, today);
  return {
    id: dog.id, practiceId: dog.house.id, animalId: newAnimalId(), callName: dog.call, breed: dog.breed, sex: dog.sex, neutered: dog.neutered ?? false,
    bornEarliest: date(born.earliest), bornLatest: date(born.latest), bornPrecision: born.precision, sireName: dog.sire ?? null, damName: dog.dam ?? null,
  };
}
