import { generateKeyPairSync, randomUUID } from 'node:crypto';
import type { Db, Tx } from '#libs/platform/database/db';
import { hashPassword } from '#libs/platform/passwords/password';
import { centres, type CentreKey } from './centre.js';
import { country, freeDays } from './country.js';
import { schemeBreeds } from './breeds.js';
import type { Centre, DemoScheme, House } from './demo-scheme.js';
import { foundPractice } from './found-practice.js';
import { lead, practices, type PracticeKey, type SeedStaff } from './practices.js';
import { registerDogs } from './register-dogs.js';
import { DEMO_PASSWORD, emailOf } from './sign-ins.js';

/** The scheme with its practices, centres, people and dogs, as they stand before the first booking. */
export async function foundScheme(db: Db, now: Date): Promise<DemoScheme> {
  // One password for everybody, so one hash: it keeps nobody out who can read it on the first page.
  const passwordHash = await hashPassword(DEMO_PASSWORD);
  return db.system('filling in the demo', async (tx) => {
    const scheme = await writeScheme(tx);
    const staff = (person: SeedStaff, mail: string, where: { practiceId?: string; centreId?: string }) =>
      ({ id: randomUUID(), schemeId: scheme, name: person.name, email: emailOf(person, mail), passwordHash, roles: person.roles, ...where });
    await tx.staff.create({ data: staff(lead, 'basin.example', {}) });
    const houses = {} as Record<PracticeKey, House>;
    for (const practice of practices) houses[practice.key] = await foundPractice(tx, scheme, practice, now, staff);
    const reading = {} as Record<CentreKey, Centre>;
    for (const centre of centres) {
      const { key, mail, readers, ...row } = centre;
      const id = randomUUID();
      await tx.centre.create({ data: { id, schemeId: scheme, ...row, email: `films@${mail}`, zone: country.zone, region: null, holidays: freeDays(now.getUTCFullYear()), remindEvery: 3, reminders: 2, appealDays: 30 } });
      const people = readers.map((reader) => staff(reader, mail, { centreId: id }));
      await tx.staff.createMany({ data: people });
      reading[key] = { id, name: centre.name, feeMinor: centre.feeMinor, readers: people.map(({ id: person, name }) => ({ id: person, name })) };
    }
    return { houses, centres: reading, dogs: await registerDogs(tx, houses, now) };
  });
}

async function writeScheme(tx: Tx): Promise<string> {
  const { privateKey, publicKey } = generateKeyPairSync('ed25519', { publicKeyEncoding: { type: 'spki', format: 'pem' }, privateKeyEncoding: { type: 'pkcs8', format: 'pem' } });
  const row = await tx.scheme.create({
    data: { name: country.scheme, country: country.name, currency: country.currency, zone: country.zone, demo: true, breeds: schemeBreeds as object, signingKey: privateKey, publicKey },
    select: { id: true },
  });
  return row.id;
}
