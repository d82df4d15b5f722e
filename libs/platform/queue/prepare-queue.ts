import { createPostgresBackend, Queue } from 'bullmq';
import pg from 'pg';

/**
 * Makes or upgrades the queue's own tables in the schema "bullmq". Run by one process only, as the owner, before
 * any other connects; `logins` are the restricted logins that may then use the queue.
 */
export async function prepareQueue(options: { ownerUrl: string; logins?: readonly string[] }): Promise<void> {
  const queue = new Queue('cotyla-prepare', { connection: { connectionString: options.ownerUrl, schema: 'bullmq', migrate: true, max: 1 }, skipMetasUpdate: true }, createPostgresBackend);
  try {
    await queue.waitUntilReady();
  } finally {
    await queue.close();
  }
  if (options.logins?.length) await allow(options.ownerUrl, options.logins);
}

async function allow(ownerUrl: string, logins: readonly string[]): Promise<void> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    const to = logins.map((login) => client.escapeIdentifier(login)).join(', ');
    await client.query(`
      GRANT USAGE ON SCHEMA bullmq TO ${to};
      GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA bullmq TO ${to};
      GRANT USAGE, SELECT, UPDATE ON ALL SEQUENCES IN SCHEMA bullmq TO ${to};
      GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA bullmq TO ${to};
      GRANT EXECUTE ON ALL PROCEDURES IN SCHEMA bullmq TO ${to}`);
  } finally {
    await client.end();
  }
}
