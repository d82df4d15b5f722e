import { createHash } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdir, readdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import pg from 'pg';
import { to } from 'pg-copy-streams';
import { DiskFileStore } from '../files/disk-file-store.js';
import type { FileStore } from '../files/file-store.js';
import { filesFolder, tableFile, TOMBSTONES, writeManifest, type Manifest } from './manifest.js';
import { copyOf, migrationsOf, tablesOf, type Table } from './tables.js';
import { keepTombstones } from './tombstones.js';

export interface BackUpOptions {
  /** The login that owns the tables. */
  databaseUrl: string;
  files: FileStore;
  folder: string;
  now: Date;
}

/**
 * Database and files as of one moment, while the program runs. The database is read in one transaction first;
 * a file is put before the row that names it is committed and is never deleted, so that every file that the rows
 * name is there when the files are copied.
 */
export async function backUp({ databaseUrl, files, folder, now }: BackUpOptions): Promise<Manifest> {
  await emptyFolder(folder);
  const client = new pg.Client(databaseUrl);
  await client.connect();
  try {
    const database = await copyDatabase(client, folder);
    const content: Manifest = { format: 1, madeAt: now.toISOString(), ...database, files: await copyFiles(files, folder) };
    await writeManifest(folder, content);
    return content;
  } finally {
    await client.end();
  }
}

async function emptyFolder(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  if ((await readdir(folder)).length > 0) throw new Error(`${folder} is not empty. Name a new folder for each backup.`);
  await mkdir(path.join(folder, 'tables'));
}

async function copyDatabase(client: pg.Client, folder: string): Promise<Omit<Manifest, 'format' | 'madeAt' | 'files'>> {
  await client.query('BEGIN TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY');
  const { rows: [server] } = await client.query<{ version: string }>("SELECT current_setting('server_version') AS version");
  const tables: Manifest['tables'] = [];
  for (const table of await tablesOf(client)) tables.push(await copyTable(client, table, folder));
  const migrations = await migrationsOf(client);
  const { rows: tombstones } = await client.query<{ person: string; practice: string; at: Date }>('SELECT person_id AS person, practice_id AS practice, at FROM tombstone ORDER BY at');
  await keepTombstones(path.join(folder, TOMBSTONES), tombstones.map((t) => ({ ...t, at: t.at.toISOString() })));
  const { rows: sequences } = await client.query<{ name: string }>("SELECT sequencename AS name FROM pg_sequences WHERE schemaname = 'public' ORDER BY 1");
  const counted: Manifest['sequences'] = [];
  for (const { name } of sequences) {
    const { rows: [at] } = await client.query<{ last: string; called: boolean }>(`SELECT last_value::text AS last, is_called AS called FROM ${client.escapeIdentifier(name)}`);
    counted.push({ name, ...at! });
  }
  await client.query('COMMIT');
  return { postgres: server!.version, migrations, tables, sequences: counted };
}

async function copyTable(client: pg.Client, table: Table, folder: string): Promise<Manifest['tables'][number]> {
  const hash = createHash('sha256');
  const counted = new Transform({ transform: (chunk: Buffer, _encoding, done) => { hash.update(chunk); done(null, chunk); } });
  const source = client.query(to(`COPY ${copyOf(client, table)} TO STDOUT`));
  await pipeline(source, counted, createWriteStream(tableFile(folder, table.name), { mode: 0o600 }));
  return { ...table, rows: source.rowCount, sha256: hash.digest('hex') };
}

async function copyFiles(from: FileStore, folder: string): Promise<Manifest['files']> {
  const copies = new DiskFileStore(filesFolder(folder));
  const copied: Manifest['files'] = [];
  for await (const sha256 of from.list()) {
    const { size } = await copies.put(await from.read(sha256), { maxBytes: Number.MAX_SAFE_INTEGER });
    copied.push({ sha256, bytes: size });
  }
  return copied.sort((a, b) => a.sha256.localeCompare(b.sha256));
}

/** How large a backup on disk is, in bytes. */
export async function sizeOf({ tables, files }: Manifest, folder: string): Promise<number> {
  const sizes = await Promise.all(tables.map(async (t) => (await stat(tableFile(folder, t.name))).size));
  return [...sizes, ...files.map((f) => f.bytes)].reduce((sum, n) => sum + n, 0);
}
