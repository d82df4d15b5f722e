import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createApi } from '#apps/api/app';
import { Deps } from '#apps/api/deps';
import { systemClock } from '#libs/platform/clock/clock';
import { Db } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { Limits } from '#libs/platform/limits/limits';
import type { Me } from '#libs/contracts/session';
import { fillDemo } from '#seed/fill-demo';
import type { Road } from '#seed/roads/road';
import { plans } from '#seed/scenario';
import { DEMO_PASSWORD } from '#seed/sign-ins';
import { cloneDatabase, type TestDatabase } from '../../support/database.js';
import { testSecrets } from '../../support/secrets.js';

export interface BenchGround {
  database: TestDatabase;
  db: Db;
  roads: Road[];
  /** Where the api listens, in this process. */
  url: string;
  signIn(email: string): Promise<{ cookie: string; csrf: string }>;
  close(): Promise<void>;
}

/** The connections of one process, ours and the bare one alike. */
export const CONNECTIONS = 12;

/** The built api over a database with some orders of the demo; with the built pages if they are given. */
export async function openBench(dogs: string[], { web }: { web?: string } = {}): Promise<BenchGround> {
  const database = await cloneDatabase();
  const folder = await mkdtemp(path.join(tmpdir(), 'bench-'));
  const files = new DiskFileStore(folder);
  const system = new Db(database.workerUrl);
  const publicUrl = 'http://127.0.0.1';
  const roads = (await fillDemo({ db: system, files, publicUrl, now: new Date(), chosen: plans.filter((p) => dogs.includes(p.dog)) }))!;
  const db = new Db(database.apiUrl, { connections: CONNECTIONS });
  const settings = { publicUrl, demo: false, dataFolder: folder, mail: { captured: true as const, from: 'x@cotyla.example' } };
  const api = await createApi({ deps: new Deps(db, systemClock, files, new Limits(), testSecrets, settings), ...(web && { web }), log: (error) => console.error(error) });
  await api.listen(0, '127.0.0.1');
  const url = await api.getUrl();
  return {
    database, db, roads, url,
    signIn: async (email) => {
      const sent = await fetch(`${url}/api/sign-in`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ email, password: DEMO_PASSWORD }) });
      return { cookie: sent.headers.getSetCookie().at(-1)!.split(';')[0]!, csrf: ((await sent.json()) as Me).csrf };
    },
    close: async () => {
      await api.close();
      await db.close();
      await system.close();
      await database.drop();
      await rm(folder, { recursive: true });
    },
  };
}
