import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { DemoSignIns } from '#libs/contracts/session';
import { centres } from './centre.js';
import { country } from './country.js';
import { lead, practices, type SeedStaff } from './practices.js';

/** Everybody’s in the demo, and nobody’s anywhere else. */
export const DEMO_PASSWORD = 'river-otter-7';

export const emailOf = (person: SeedStaff, mail: string): string => `${person.mail}@${mail}`;

/** In the order in which a visitor tries them: the desk first, the other practices last. */
export function demoSignIns(): DemoSignIns {
  const of = (people: SeedStaff[], home: string, mail: string): DemoSignIns => people.map((p) => ({ name: p.name, roles: p.roles, home, email: emailOf(p, mail), password: DEMO_PASSWORD }));
  const [first, ...others] = practices.map((p) => of(p.staff, `${p.name}, ${p.place}`, p.mail));
  return [...first!, ...centres.flatMap((c) => of(c.readers, c.name, c.mail)), ...of([lead], country.scheme, 'basin.example'), ...others.flat()];
}

export async function writeSignIns(folder: string): Promise<void> {
  await writeFile(path.join(folder, 'demo-sign-ins.json'), `${JSON.stringify(demoSignIns(), null, 2)}\n`, { mode: 0o600 });
}
