import pg from 'pg';
import type { SecretBox } from './secret-box.js';

/** Secrets that no key of this server opens, and the keys that would. */
export async function lostSecrets(ownerUrl: string, box: SecretBox): Promise<{ secrets: number; keys: string[] }> {
  const client = new pg.Client(ownerUrl);
  await client.connect();
  try {
    const { rows } = await client.query<{ key: string; n: number }>(`SELECT key_id AS key, count(*)::int AS n FROM
      (SELECT key_id FROM centre_channel_secret UNION ALL SELECT key_id FROM webhook WHERE ended_at IS NULL UNION ALL SELECT key_id FROM centre_key WHERE ended_at IS NULL) s
      WHERE key_id IS NOT NULL GROUP BY 1 ORDER BY 1`);
    const lost = rows.filter(({ key }) => !box.knows(key));
    return { secrets: lost.reduce((sum, { n }) => sum + n, 0), keys: lost.map(({ key }) => key) };
  } finally {
    await client.end();
  }
}
