import { addToOutbox } from '#libs/platform/database/outbox';
import type { Tx } from '#libs/platform/database/db';

/** How long a digest waits for more lines, so that a centre gets one mail and not ten. Our own choice. */
const GATHER_SECONDS = 20;

/**
 * Adds a line to the centre's digest of that day and gives its id; null when today's digest has left already,
 * so that the study waits for the next working day.
 */
export async function addToDigest(tx: Tx, now: Date, d: { centre: string; name: string; email: string; day: string; line: string }): Promise<string | null> {
  const leaves = new Date(now.getTime() + GATHER_SECONDS * 1000);
  const once = `digest:${d.centre}:${d.day}`;
  const [row] = await tx.$queryRaw<{ id: string; fresh: boolean }[]>`
    INSERT INTO message AS m (once_key, kind, to_name, to_email, subject, body, documents, not_before)
    VALUES (${once}, 'chase', ${d.name}, ${d.email}, '', ${JSON.stringify({ template: 'chase', data: { lines: [d.line] } })}::jsonb, '{}', ${leaves})
    ON CONFLICT (once_key) DO UPDATE SET body = jsonb_set(m.body, '{data,lines}', (m.body #> '{data,lines}') || to_jsonb(${d.line}::text)) WHERE m.state = 'waiting'
    RETURNING id, (xmax = 0) AS fresh`;
  if (!row) return null;
  if (row.fresh) await addToOutbox(tx, 'send-message', { message: row.id }, { dedupe: row.id, notBefore: leaves });
  return once;
}
