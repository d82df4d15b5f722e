import crypto from 'node:crypto';
import pg from 'pg';
import { readMigrations } from './migration-folder.mjs';

// Any number will do, as long as it stays the same for ever.
const LOCK = 72_707_370;

// The table that `prisma migrate` keeps, so that either can follow the other.
const TABLE = `
CREATE TABLE IF NOT EXISTS public._prisma_migrations (
  id VARCHAR(36) PRIMARY KEY NOT NULL,
  checksum VARCHAR(64) NOT NULL,
  finished_at TIMESTAMPTZ,
  migration_name VARCHAR(255) NOT NULL,
  logs TEXT,
  rolled_back_at TIMESTAMPTZ,
  started_at TIMESTAMPTZ NOT NULL DEFAULT now(),
  applied_steps_count INTEGER NOT NULL DEFAULT 0
)`;

/** Applies what is missing, each migration in one transaction, and gives the names applied. */
export async function deployMigrations(url, migrations = readMigrations()) {
  const client = new pg.Client(url);
  await client.connect();
  try {
    await client.query('SELECT pg_advisory_lock($1)', [LOCK]);
    await client.query(TABLE);
    const pending = await pendingMigrations(client, migrations);
    for (const migration of pending) await apply(client, migration);
    return pending.map(({ name }) => name);
  } finally {
    await client.end();
  }
}

async function pendingMigrations(client, migrations) {
  const { rows } = await client.query(
    'SELECT migration_name AS name, checksum, finished_at FROM public._prisma_migrations WHERE rolled_back_at IS NULL ORDER BY started_at',
  );
  const byName = new Map(migrations.map((migration) => [migration.name, migration]));
  for (const { name, checksum, finished_at: finished } of rows) {
    if (!finished) throw new Error(`Migration ${name} was begun in this database and never finished. Restore the database or resolve it by hand, then start again.`);
    if (!byName.has(name)) throw new Error(`This database has migration ${name}, which this version of the program does not know. Install the version that it was last used with, or a newer one.`);
    if (byName.get(name).checksum !== checksum) throw new Error(`Migration ${name} was changed after it had been applied to this database. Put the file back as it was and write a new migration for the change.`);
  }
  const applied = new Set(rows.map(({ name }) => name));
  return migrations.filter(({ name }) => !applied.has(name));
}

async function apply(client, { name, sql, checksum }) {
  try {
    await client.query('BEGIN');
    await client.query(sql);
    await client.query(
      `INSERT INTO public._prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count)
       VALUES ($1, $2, $3, clock_timestamp(), 1)`,
      [crypto.randomUUID(), checksum, name],
    );
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    const line = error.position ? ` at line ${sql.slice(0, Number(error.position)).split('\n').length}` : '';
    throw new Error(`Migration ${name} failed${line} and left nothing behind: ${error.message}`, { cause: error });
  }
}
