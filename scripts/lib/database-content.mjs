import pg from 'pg';

const FILLING = 'Cotyla: being filled with the demo';
const DEMO = 'Cotyla: demo';

async function withClient(url, work) {
  const client = new pg.Client(url);
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

/** Creates the database on the embedded server when it is not there. */
export function createDatabase(adminUrl, name) {
  return withClient(adminUrl, async (client) => {
    const { rowCount } = await client.query('SELECT 1 FROM pg_database WHERE datname = $1', [name]);
    if (!rowCount) await client.query(`CREATE DATABASE ${client.escapeIdentifier(name)}`);
  });
}

export function dropDatabase(adminUrl, name) {
  return withClient(adminUrl, (client) => client.query(`DROP DATABASE IF EXISTS ${client.escapeIdentifier(name)} WITH (FORCE)`));
}

/** 'new', 'half-filled', 'demo' or 'own': the note stands in the database's own comment, so that it cannot be parted from it. */
export function contentOf(url) {
  return withClient(url, async (client) => {
    const { rows } = await client.query(
      `SELECT shobj_description(oid, 'pg_database') AS note, to_regclass('public._prisma_migrations') IS NULL AS fresh
       FROM pg_database WHERE datname = current_database()`,
    );
    const [{ note, fresh }] = rows;
    if (note === FILLING) return 'half-filled';
    if (note === DEMO) return 'demo';
    return fresh ? 'new' : 'own';
  });
}

function note(url, text) {
  return withClient(url, async (client) => {
    const { rows } = await client.query('SELECT current_database() AS name');
    await client.query(`COMMENT ON DATABASE ${client.escapeIdentifier(rows[0].name)} IS ${client.escapeLiteral(text)}`);
  });
}

export const noteFilling = (url) => note(url, FILLING);
export const noteDemo = (url) => note(url, DEMO);
