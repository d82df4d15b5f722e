import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import pg from 'pg';
import { from } from 'pg-copy-streams';
import { DiskFileStore } from '../files/disk-file-store.js';
import type { FileStore } from '../files/file-store.js';
import { filesFolder, readManifest, tableFile, TOMBSTONES, type Manifest } from './manifest.js';
import { copyOf, migrationsOf, tablesOf, type Table } from './tables.js';
import { readTombstones, type Tombstone } from './tombstones.js';

export interface RestoreOptions {
  /** The login that owns the tables of a database that has them and holds nothing. */
  databaseUrl: string;
  files: FileStore;
  folder: string;
  /** Further files of tombstones: who was erased after the backup was made is erased again. */
  tombstones: string[];
}

export interface Restored { manifest: Manifest; erasedAgain: number }

/** All or nothing: everything is compared with the manifest before the first row is written, and the rows come in one transaction. */
export async function restore({ databaseUrl, files, folder, tombstones }: RestoreOptions): Promise<Restored> {
  const manifest = await readManifest(folder);
  const erased = new Map<string, Tombstone>();
  for (const file of [path.join(folder, TOMBSTONES), ...tombstones]) for (const t of await readTombstones(file)) erased.set(t.person, t);
  await compareTables(manifest, folder);
  const client = new pg.Client(databaseUrl);
  await client.connect();
  try {
    await refuseUnfit(client, manifest);
    // Before the rows that name them; a file that no row names does no harm.
    await bringFiles(manifest, folder, files);
    await client.query('BEGIN');
    await loadTables(client, manifest, folder);
    for (const { name, last, called } of manifest.sequences) await client.query('SELECT setval($1::regclass, $2::bigint, $3)', [`public.${client.escapeIdentifier(name)}`, last, called]);
    await handOverAgain(client, manifest);
    const erasedAgain = await eraseAgain(client, [...erased.values()]);
    await client.query('COMMIT');
    return { manifest, erasedAgain };
  } finally {
    // An open transaction ends with its connection and leaves nothing.
    await client.end();
  }
}

async function compareTables(manifest: Manifest, folder: string): Promise<void> {
  for (const { name, sha256 } of manifest.tables) {
    const hash = createHash('sha256');
    await pipeline(createReadStream(tableFile(folder, name)), hash).catch((error: unknown) => {
      throw new Error(`Table ${name} is missing in ${folder}. Take another copy of this backup; nothing was restored.`, { cause: error });
    });
    if (hash.digest('hex') !== sha256) throw new Error(`Table ${name} in ${folder} is not as it was written. Take another copy of this backup; nothing was restored.`);
  }
}

async function refuseUnfit(client: pg.Client, manifest: Manifest): Promise<void> {
  const same = JSON.stringify(await migrationsOf(client)) === JSON.stringify(manifest.migrations);
  if (!same) throw new Error(`The backup was made with other migrations (its last is ${manifest.migrations.at(-1)?.name ?? 'none'}). Restore it with the version of the program that made it; starting a newer version then brings it up to date.`);
  for (const table of await tablesOf(client)) {
    const { rowCount } = await client.query(`SELECT 1 FROM ${client.escapeIdentifier(table.name)} LIMIT 1`);
    if (rowCount) throw new Error(`The database is not empty: ${table.name} has rows. A backup is restored into a new database only; nothing was changed.`);
  }
}

async function bringFiles(manifest: Manifest, folder: string, files: FileStore): Promise<void> {
  const copies = new DiskFileStore(filesFolder(folder));
  // Read to the end once before anything is put: the stream fails when a file is not what its name says.
  for (const { sha256 } of manifest.files) await pipeline(await copies.read(sha256), createHash('sha256'));
  for (const { sha256 } of manifest.files) await files.put(await copies.read(sha256), { maxBytes: Number.MAX_SAFE_INTEGER });
}

async function loadTables(client: pg.Client, manifest: Manifest, folder: string): Promise<void> {
  for (const table of manifest.tables) {
    const name = client.escapeIdentifier(table.name);
    // What a trigger would add is in the backup already.
    await client.query(`ALTER TABLE ${name} DISABLE TRIGGER USER`);
    const rows = await loadTable(client, table, folder);
    await client.query(`ALTER TABLE ${name} ENABLE TRIGGER USER`);
    if (rows !== table.rows) throw new Error(`Table ${table.name} should have ${table.rows} rows and has ${rows}. Nothing was restored.`);
  }
}

async function loadTable(client: pg.Client, table: Table, folder: string): Promise<number> {
  const target = client.query(from(`COPY ${copyOf(client, table)} FROM STDIN`));
  await pipeline(createReadStream(tableFile(folder, table.name)), target);
  return target.rowCount;
}

const QUEUED_FOR = '1 day';

/** What had been handed to the queue may not have been done when the backup was made. A job that was done does nothing a second time. */
async function handOverAgain(client: pg.Client, { madeAt }: Manifest): Promise<void> {
  await client.query(`UPDATE outbox SET relayed_at = NULL WHERE relayed_at > $1::timestamptz - interval '${QUEUED_FOR}'`, [madeAt]);
}

/** Somebody who was erased, before the backup or after it, is erased; the worker then says so on their orders. */
async function eraseAgain(client: pg.Client, erased: Tombstone[]): Promise<number> {
  let again = 0;
  for (const { person, practice, at } of erased) {
    await client.query('INSERT INTO tombstone (person_id, practice_id, at) VALUES ($1, $2, $3) ON CONFLICT DO NOTHING', [person, practice, at]);
    const { rowCount } = await client.query('SELECT 1 FROM person WHERE id = $1 AND erased_at IS NULL', [person]);
    if (!rowCount) continue;
    await client.query('SELECT app.blank_person($1, $2)', [person, at]);
    await client.query("INSERT INTO outbox (job, payload, dedupe) VALUES ('note-erased', jsonb_build_object('person', $1::text), $1::text)", [person]);
    again++;
  }
  return again;
}
