import { randomUUID } from 'node:crypto';
import { localDay } from '#libs/pathway/zones';
import type { Db, Tx } from '#libs/platform/database/db';
import { newAnimalId } from '#libs/register/dogs/new-animal-id';
import { nextAccession } from '#libs/science/identifiers/accession';
import { queueActor } from '#libs/steps/record/actor';
import { readOrder, type OrderRecord } from '#libs/steps/record/order-record';
import { storeProjection } from '#libs/steps/record/projection';
import { workOn } from '#libs/steps/record/work';
import { freezeSets } from '#libs/steps/statistics/freeze-sets';
import { noteStudies } from '#libs/steps/statistics/note-studies';
import type { DemoScheme } from '../demo-scheme.js';
import { earlierDogs } from './earlier-dogs.js';
import { earlierOrder, type EarlierOrder } from './earlier-facts.js';
import { sayInventedBirths } from './say-births.js';

const PUBLIC_URL = 'http://127.0.0.1';
const date = (day: string) => new Date(`${day}T00:00:00Z`);

/**
 * Results of past years at another practice, so that the breeds can be set beside one another, and the sets that
 * were frozen of them on the first of January. Written in bulk: a full road for each would take minutes.
 */
export async function earlierResults(db: Db, scheme: DemoScheme, now: Date): Promise<number> {
  const { karsby: house } = scheme.houses;
  const year = Number(localDay(now.toISOString(), house.zone).slice(0, 4));
  const owner = randomUUID();
  const orders = earlierDogs(year).map((dog) => earlierOrder(dog, randomUUID(), { house, centre: scheme.centres.threnfold, owner }));
  await db.system('filling in the demo', (tx) => writeDogs(tx, house.id, owner, orders));
  await db.system('filling in the demo', (tx) => writeOrders(tx, house.id, orders));
  await db.system('filling in the demo', (tx) => writeLitters(tx, house.id, owner, orders));
  await count(db, house.id, orders, now);
  const clock = { now: () => date(`${year}-01-01`) };
  await freezeSets({ db, clock, publicUrl: PUBLIC_URL }, 'the program, as every year');
  await db.system('filling in the demo', (tx) => sayInventedBirths(tx, year, clock.now()));
  return orders.length;
}

async function writeDogs(tx: Tx, practiceId: string, owner: string, orders: EarlierOrder[]): Promise<void> {
  await tx.person.create({ data: { id: owner, practiceId, name: 'Invented owners of past years', channel: 'post', address: 'Nowhere, Karsby' } });
  await tx.dog.createMany({
    data: orders.map(({ dogId, dog }) => ({ id: dogId, practiceId, animalId: newAnimalId(), callName: dog.call, breed: dog.breed, sex: dog.sex, neutered: false, bornEarliest: date(dog.born), bornLatest: date(dog.born), bornPrecision: 'day' })),
  });
  await tx.dogName.createMany({ data: orders.map(({ dogId, dog }) => ({ practiceId, dogId, name: dog.call, from: date(dog.born) })) });
  await tx.dogRole.createMany({ data: orders.map(({ dogId, dog }) => ({ practiceId, dogId, personId: owner, role: 'owner', from: date(dog.born) })) });
}

async function writeOrders(tx: Tx, practiceId: string, orders: EarlierOrder[]): Promise<void> {
  const { letters } = await tx.practice.findUniqueOrThrow({ where: { id: practiceId }, select: { letters: true } });
  const last = new Map<number, number>();
  const accession = (opened: Date): string => {
    const year = opened.getUTCFullYear();
    const next = nextAccession(letters, year, last.get(year) ?? 0);
    last.set(year, next.number);
    return next.text;
  };
  await tx.order.createMany({ data: orders.map(({ id, dogId, opened }) => ({ id, practiceId, accession: accession(opened), dogId, createdAt: opened })) });
  const rows = orders.flatMap(({ id: order, facts }) => facts.map(({ id, type, at, rec, by, byName, role, practice, ...body }) => ({ order, id, type, at, rec, by, by_name: byName, role, practice, body })));
  await tx.$executeRaw`INSERT INTO fact (order_id, id, type, at, rec, by, by_name, role, practice, body)
    SELECT r."order", id, type, at, rec, by, by_name, role, practice, body FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
      AS r("order" uuid, id text, type text, at timestamptz, rec timestamptz, by text, by_name text, role text, practice text, body jsonb)`;
}

/** Whole litters came together; the others were chosen by somebody. */
async function writeLitters(tx: Tx, practiceId: string, owner: string, orders: EarlierOrder[]): Promise<void> {
  const litters = [...new Set(orders.map((o) => o.dog.litter).filter((litter) => litter !== null))];
  for (const litter of litters) {
    const pups = orders.filter((o) => o.dog.litter === litter);
    const groupId = randomUUID();
    const { dog, opened } = pups[0]!;
    await tx.groupBooking.create({ data: { id: groupId, practiceId, callerId: owner, payerId: owner, by: 'queue', at: opened, day: date(dog.imaged), litter: true, whole: true, born: pups.length, alive: pups.length, dam: null } });
    await tx.groupBookingDog.createMany({ data: pups.map((pup, place) => ({ groupId, dogId: pup.dogId, practiceId, place, orderId: pup.id })) });
  }
}

const AT_ONCE = 25;

/** Reads every order off its facts as of now, as an appended fact would. */
async function count(db: Db, practice: string, orders: EarlierOrder[], now: Date): Promise<void> {
  for (let i = 0; i < orders.length; i += AT_ONCE) {
    const some = orders.slice(i, i + AT_ONCE);
    await db.system('filling in the demo', async (tx) => {
      const one = (await readOrder(tx, some[0]!.id))!;
      for (const { id, dogId, dog, facts } of some) {
        const record: OrderRecord = { ...one, id, dog: dogId, breed: dog.breed, born: { earliest: dog.born, latest: dog.born }, version: facts.length, facts };
        const work = workOn(tx, now, queueActor(practice), record, PUBLIC_URL);
        await storeProjection(work, work.evaluation);
        await noteStudies(work, work.evaluation);
      }
    });
  }
}
