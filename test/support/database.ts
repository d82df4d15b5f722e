import { randomUUID } from 'node:crypto';
import pg from 'pg';

export interface TestDatabase {
  /** Owns the tables; sees everything. */
  ownerUrl: string;
  /** The api's restricted login. */
  apiUrl: string;
  workerUrl: string;
  drop(): Promise<void>;
}

interface TestServer {
  adminUrl: string;
  template: string;
  passwords: { app: string; worker: string };
}

function testServer(): TestServer {
  const told = process.env.TEST_SERVER;
  if (!told) throw new Error('There is no test server: tests that need a database stand below test/.');
  return JSON.parse(told) as TestServer;
}

async function administer(sql: string): Promise<void> {
  const client = new pg.Client(testServer().adminUrl);
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

/** A migrated database of the caller's own, empty of data. */
export async function cloneDatabase(): Promise<TestDatabase> {
  const { adminUrl, template, passwords } = testServer();
  const name = `clone_${randomUUID().replaceAll('-', '')}`;
  await administer(`CREATE DATABASE ${name} TEMPLATE ${template} STRATEGY file_copy`);
  const address = (login?: { role: string; password: string }): string => {
    const url = new URL(adminUrl);
    url.pathname = `/${name}`;
    if (login) Object.assign(url, { username: login.role, password: login.password });
    return url.href;
  };
  return {
    ownerUrl: address(),
    apiUrl: address({ role: 'cotyla_api', password: passwords.app }),
    workerUrl: address({ role: 'cotyla_worker', password: passwords.worker }),
    drop: () => administer(`DROP DATABASE IF EXISTS ${name} WITH (FORCE)`),
  };
}
