import { randomUUID } from 'node:crypto';
import type { NewDog } from '#libs/contracts/register';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db, type Tx } from '#libs/platform/database/db';
import type { Actor } from '#libs/register/actor';
import type { StepDeps } from '#libs/register/deps';
import { cloneDatabase } from '#test/support/database';

export interface House {
  id: string;
  desk: Actor;
  manager: Actor;
  vet: Actor;
  nurse: Actor;
  radiographer: Actor;
}

export interface Ground {
  deps: StepDeps;
  clock: TestClock;
  scheme: string;
  centre: string;
  /** Fully staffed and equipped. */
  weir: House;
  /** Has a manager, and nothing else. */
  quay: House;
  /** As the worker's login: sees every practice. */
  everywhere<T>(work: (tx: Tx) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

const day = (text: string) => new Date(`${text}T00:00:00Z`);
const PRICES = { currency: 'MRK', taxPercent: 10, sedationMinor: 9_600, radiographMinor: 4_200, sendingMinor: 1_200 };

/** A Wednesday. Everything here is invented. */
export const TODAY = '2026-11-25';

export async function twoPractices(): Promise<Ground> {
  const database = await cloneDatabase();
  const db = new Db(database.apiUrl, { connections: 6 });
  const system = new Db(database.workerUrl, { connections: 2 });
  const clock = new TestClock(`${TODAY}T09:00:00Z`);
  const everywhere = <T>(work: (tx: Tx) => Promise<T>) => system.system('setting up a test', work);
  const made = await everywhere(async (tx) => {
    const scheme = await tx.scheme.create({
      data: { name: 'Basin scheme', country: 'Aldra', currency: 'MRK', zone: 'Europe/Vienna', signingKey: 'none', publicKey: 'none', breeds: { names: ['Karsby Spitz', 'Marsh Mastiff'], older: { hipExtended: [{ breeds: ['Marsh Mastiff'], youngest: { months: 18 }, source: 'invented' }] } } },
      select: { id: true },
    });
    const centre = await tx.centre.create({ data: { schemeId: scheme.id, name: 'Reading centre, Threnfold', place: 'Threnfold', email: 'films@threnfold.example', zone: 'Europe/Vienna', holidays: [], ackDays: 3, resultDays: 10, remindEvery: 3, reminders: 2, appealDays: 30, feeMinor: 5_800, protocols: ['hipLaxity', 'hipExtended', 'elbow'] } });
    const weir = await house(tx, scheme.id, 'AR', 'weir', ['desk', 'manager', 'vet', 'nurse', 'radiographer']);
    await tx.room.create({ data: { practiceId: weir.id, name: 'Room 1', kind: 'xray' } });
    await tx.equipment.createMany({ data: [{ practiceId: weir.id, name: 'Table', kind: 'xray', checkedUntil: day('2027-06-30') }, { practiceId: weir.id, name: 'Device', kind: 'distractionDevice', checkedUntil: day('2027-06-30') }] });
    await tx.accreditation.create({ data: { practiceId: weir.id, staffId: weir.radiographer.id, protocol: 'hipLaxity', from: day('2026-01-01'), until: day('2027-03-31'), evidence: 'Course of the scheme.' } });
    const quay = await house(tx, scheme.id, 'SQ', 'quay', ['manager']);
    return { scheme: scheme.id, centre: centre.id, weir, quay };
  });
  const close = async () => {
    await db.close();
    await system.close();
    await database.drop();
  };
  return { ...made, deps: { db, clock, publicUrl: 'http://cotyla.example' }, clock, everywhere, close };
}

type HouseRole = 'desk' | 'manager' | 'vet' | 'nurse' | 'radiographer';

async function house(tx: Tx, schemeId: string, letters: string, mail: string, roles: HouseRole[]): Promise<House> {
  const id = randomUUID();
  await tx.practice.create({ data: { id, schemeId, name: `${mail} practice`, place: 'Dellin', address: '3 Lock Lane', phone: '0470 21 00', email: `desk@${mail}.example`, zone: 'Europe/Vienna', letters, prices: PRICES, policy: {} } });
  const actors = {} as Record<HouseRole, Actor>;
  for (const role of roles) {
    const staff = await tx.staff.create({ data: { schemeId, practiceId: id, name: `The ${role}`, email: `${role}@${mail}.example`, passwordHash: 'none', roles: [role] } });
    actors[role] = { id: staff.id, name: staff.name, roles: [role], practice: id };
  }
  return { id, ...actors };
}

/** Born on a known day, marked by an invented transponder, with a new owner who gets mail. */
export function aDog(more: Partial<NewDog> = {}): NewDog {
  return {
    name: 'Ilka vom Talgrund', callName: 'Ilka', breed: 'Karsby Spitz', sex: 'female', neutered: false, studBook: [],
    birth: { earliest: '2025-10-03', latest: '2025-10-03', precision: 'day' },
    identifier: { kind: 'transponder', value: '999000000000017', how: 'scanned' },
    owner: { new: { name: 'Lena Stroud', email: 'lena@mail.example', phone: '0470 12 93', channel: 'mail', language: 'en' } },
    ...more,
  };
}

let last = 1000;
/** A transponder of the test range that no other dog has. */
export const anotherNumber = (): NewDog['identifier'] => ({ kind: 'transponder', value: `99900000000${++last}`, how: 'scanned' });
