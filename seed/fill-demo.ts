import type { Db } from '#libs/platform/database/db';
import type { FileStore } from '#libs/platform/files/file-store';
import { chargeDemo } from './charge-demo.js';
import { earlierResults } from './earlier/earlier-results.js';
import { FilmRoom } from './films.js';
import { foundScheme } from './found-scheme.js';
import type { Road } from './roads/road.js';
import { playScenario } from './scenario.js';
import type { Plan } from './scenario/plan.js';

export interface Filling {
  db: Db;
  files: FileStore;
  publicUrl: string;
  now: Date;
  say?: (line: string) => void;
  /** Left out, the whole scenario. */
  chosen?: Plan[];
}

/** Fills an empty database with the demo; a database that has a scheme is left as it is. */
export async function fillDemo({ db, files, publicUrl, now, say = () => undefined, chosen }: Filling): Promise<Road[] | undefined> {
  const taken = await db.system('filling in the demo', (tx) => tx.scheme.count());
  if (taken > 0) return undefined;
  const scheme = await foundScheme(db, now);
  say(`${scheme.dogs.size} dogs, their people and ${Object.keys(scheme.houses).length} practices are in the register.`);
  if (!chosen) say(`${await earlierResults(db, scheme, now)} invented dogs of past years are counted, and the year’s sets frozen.`);
  const driver = { db, files, films: new FilmRoom(), scheme, publicUrl };
  const roads = await playScenario(driver, now, { say, ...(chosen ? { chosen } : {}) });
  await chargeDemo(driver, roads, now);
  return roads;
}
