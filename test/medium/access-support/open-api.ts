import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import pg from 'pg';
import { createApi } from '#apps/api/app';
import { Deps } from '#apps/api/deps';
import { systemClock } from '#libs/platform/clock/clock';
import { Db, type Tx } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { Limits } from '#libs/platform/limits/limits';
import { fillDemo } from '#seed/fill-demo';
import type { Road } from '#seed/roads/road';
import { plans } from '#seed/scenario';
import { cloneDatabase, type TestDatabase } from '#test/support/database';
import { testSecrets } from '#test/support/secrets';

export interface OpenApi {
  api: NestFastifyApplication;
  /** Where it listens. */
  url: string;
  database: TestDatabase;
  /** As the owner of the tables: sees and may do everything. */
  owner: pg.Client;
  /** As the worker's login, for what a test prepares. */
  everywhere<T>(work: (tx: Tx) => Promise<T>): Promise<T>;
  roads: Road[];
  /** What the program could not explain to anybody; a test that provokes no such thing expects none. */
  broken: unknown[];
  close(): Promise<void>;
}

const SETTINGS = { publicUrl: 'https://cotyla.example', demo: false, dataFolder: '', mail: { captured: true as const, from: 'Cotyla <desk@cotyla.example>' } };

/** The api over a database of its own, with the demo's practices and people, and the orders of these dogs alone; its files lie in `kept` if that is given. */
export async function openApi(dogs: string[], kept?: string): Promise<OpenApi> {
  const database = await cloneDatabase();
  const folder = kept ?? (await mkdtemp(path.join(tmpdir(), 'api-')));
  const files = new DiskFileStore(folder);
  const chosen = plans.filter(({ dog }) => dogs.includes(dog));
  const system = new Db(database.workerUrl, { connections: 4 });
  const roads = (await fillDemo({ db: system, files, publicUrl: SETTINGS.publicUrl, now: new Date(), chosen }))!;
  const owner = new pg.Client(database.ownerUrl);
  await owner.connect();
  await owner.query('UPDATE scheme SET demo = false');
  const db = new Db(database.apiUrl, { connections: 6 });
  const broken: unknown[] = [];
  const api = await createApi({ deps: new Deps(db, systemClock, files, new Limits(), testSecrets, SETTINGS), log: (error) => broken.push(error) });
  await api.listen(0, '127.0.0.1');
  const url = await api.getUrl();
  const close = async () => {
    await api.close();
    await Promise.all([db.close(), system.close(), owner.end()]);
    await database.drop();
    if (!kept) await rm(folder, { recursive: true });
  };
  return { api, url, database, owner, everywhere: (work) => system.system('preparing a test', work), roads, broken, close };
}
