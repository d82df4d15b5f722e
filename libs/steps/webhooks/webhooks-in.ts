import type { Webhooks } from '#libs/contracts/integrations';
import type { Tx } from '#libs/platform/database/db';
import type { WithSecrets } from '#libs/platform/secrets/with-secrets';

/** As many as a person looks through. */
const SHOWN = 50;
const iso = (column: string) => `to_char(${column} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;

const ROWS = `SELECT id, name, address, events, ${iso('at')} AS at, by_name AS by, ${iso('earlier_until')} AS "earlierUntil", key_id AS "keyId" FROM webhook WHERE practice_id = $1::uuid AND ended_at IS NULL ORDER BY webhook.at, id`;

const DELIVERIES = `SELECT d.id, w.name AS webhook, w.id AS "of", d.order_id AS "order", d.accession, d.event, ${iso('d.event_at')} AS at, d.state, ${iso('d.due_at')} AS due,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('at', ${iso('t.at')}, 'words', t.words, 'answer', t.answer, 'status', t.status, 'detail', t.detail) ORDER BY t.id) FROM webhook_try t WHERE t.delivery_id = d.id), '[]') AS tries
  FROM webhook_delivery d JOIN webhook w ON w.id = d.webhook_id WHERE d.practice_id = $1::uuid AND w.ended_at IS NULL
  ORDER BY d.state = 'givenUp' AND d.event <> 'test' DESC, d.created_at DESC, d.id LIMIT ${SHOWN}`;

export async function webhooksIn(tx: Tx, { secrets }: WithSecrets, practice: string): Promise<Webhooks> {
  const found = await tx.$queryRawUnsafe<(Omit<Webhooks['rows'][number], 'secretLost'> & { keyId: string | null })[]>(ROWS, practice);
  const rows = found.map(({ keyId, ...row }) => ({ ...row, secretLost: !secrets.knows(keyId) }));
  const deliveries = await tx.$queryRawUnsafe<Webhooks['deliveries']>(DELIVERIES, practice);
  return { rows, deliveries, secret: null };
}
