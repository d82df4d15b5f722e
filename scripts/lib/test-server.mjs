import crypto from 'node:crypto';
import pg from 'pg';
import { deployMigrations } from './deploy-migrations.mjs';
import { keptPasswords, setLogins } from './logins.mjs';
import { readMigrations } from './migration-folder.mjs';

// Held shared by every run; whoever gets it alone is the only one.
const IN_USE = 72_707_371;
const PREPARING = 72_707_372;

/** Makes the template and the logins; `release` also stops the server when no other run uses it. */
export async function prepareTestServer(postgres, folder) {
  const admin = new pg.Client(postgres.url('postgres'));
  await admin.connect();
  await admin.query('SELECT pg_advisory_lock($1)', [PREPARING]);
  if (await isAlone(admin)) await dropLeftovers(admin);
  await admin.query('SELECT pg_advisory_lock_shared($1)', [IN_USE]);
  const template = await makeTemplate(admin, postgres);
  const passwords = keptPasswords(folder);
  await setLogins(postgres.url(template), passwords);
  await admin.query('SELECT pg_advisory_unlock($1)', [PREPARING]);

  const release = async () => {
    await admin.query('SELECT pg_advisory_unlock_shared($1)', [IN_USE]);
    const alone = await isAlone(admin);
    await admin.end();
    if (alone) await postgres.stop();
  };
  return { told: { adminUrl: postgres.url('postgres'), template, passwords }, release };
}

async function isAlone(admin) {
  const { rows } = await admin.query('SELECT pg_try_advisory_lock($1) AS got', [IN_USE]);
  if (rows[0].got) await admin.query('SELECT pg_advisory_unlock($1)', [IN_USE]);
  return rows[0].got;
}

/** Clones of runs that were killed, and templates of other states of the migrations. */
async function dropLeftovers(admin) {
  const { rows } = await admin.query("SELECT datname AS name FROM pg_database WHERE datname ~ '^(clone|making|template)_'");
  for (const { name } of rows) if (name !== templateName()) await admin.query(`DROP DATABASE ${admin.escapeIdentifier(name)} WITH (FORCE)`);
}

function templateName() {
  const hash = crypto.createHash('sha256').update(JSON.stringify(readMigrations().map(({ name, checksum }) => [name, checksum])));
  return `template_${hash.digest('hex').slice(0, 12)}`;
}

async function makeTemplate(admin, postgres) {
  const name = templateName();
  const { rowCount } = await admin.query('SELECT 1 FROM pg_database WHERE datname = $1', [name]);
  if (rowCount) return name;
  const making = name.replace('template', 'making');
  await admin.query(`DROP DATABASE IF EXISTS ${making}`);
  await admin.query(`CREATE DATABASE ${making}`);
  await deployMigrations(postgres.url(making));
  await admin.query(`ALTER DATABASE ${making} RENAME TO ${name}`);
  return name;
}
