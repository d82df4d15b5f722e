import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { createApi } from '#apps/api/app';
import { Deps } from '#apps/api/deps';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { Limits } from '#libs/platform/limits/limits';
import { FilmRoom } from '#seed/films';
import { foundScheme } from '#seed/found-scheme';
import type { Driver } from '#seed/roads/road';
import { cloneDatabase } from '#test/support/database';
import { aMonday } from '#test/support/running-server';
import { Copies } from './copies.js';
import { testSecrets } from '#test/support/secrets';

const SETTINGS = { publicUrl: 'https://cotyla.example', demo: false, dataFolder: '', mail: { captured: true as const, from: 'Cotyla <desk@cotyla.example>' } };

export interface Ground {
  url: string;
  driver: Driver;
  /** The api's own; every state has its moment. */
  clock: TestClock;
  owner: pg.Client;
  copies: Copies;
  /** What broke inside. */
  broken: unknown[];
  close(): Promise<void>;
}

/** The api alone over the demo's register: nothing changes but by what is asked of it. */
export async function openGround(): Promise<Ground> {
  const database = await cloneDatabase();
  const folder = await mkdtemp(path.join(tmpdir(), 'matrix-'));
  const files = new DiskFileStore(folder);
  const [db, system] = [new Db(database.apiUrl, { connections: 6 }), new Db(database.workerUrl, { connections: 4 })];
  const clock = new TestClock(aMonday());
  const scheme = await foundScheme(system, clock.now());
  const owner = new pg.Client(database.ownerUrl);
  await owner.connect();
  const broken: unknown[] = [];
  const api = await createApi({ deps: new Deps(db, clock, files, new Limits(), testSecrets, SETTINGS), log: (error) => broken.push(error) });
  await api.listen(0, '127.0.0.1');
  return {
    url: await api.getUrl(), driver: { db: system, files, films: new FilmRoom(), scheme, publicUrl: SETTINGS.publicUrl }, clock, owner, copies: await Copies.over(owner), broken,
    close: async () => {
      await api.close();
      await Promise.all([db.close(), system.close(), owner.end()]);
      await database.drop();
      await rm(folder, { recursive: true });
    },
  };
}
