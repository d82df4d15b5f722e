import type { Tx } from '#libs/platform/database/db';
import { askSilence } from './ask-silence.js';
import { MESSAGE_COLUMNS, type MessageRow } from './message-row.js';

export type Claim = { claimed: MessageRow } | { left: 'done' | 'later' | 'dropped' } | { lost: MessageRow };

/** Our own choice: how soon something kept silent is asked about again. */
const AGAIN_MINUTES = 15;

/**
 * The conditional change that lets one worker send one message once. A row that is found claimed belongs to a
 * worker that died on the way: whether its mail left is not known, and only a person may say.
 */
export async function claimMessage(tx: Tx, id: string, now: Date): Promise<Claim> {
  const [row] = await tx.$queryRawUnsafe<(MessageRow & { notBefore: Date | null })[]>(`SELECT ${MESSAGE_COLUMNS}, not_before AS "notBefore" FROM message WHERE id = $1::uuid FOR UPDATE`, id);
  if (!row) return { left: 'done' };
  if (row.state === 'claimed') return { lost: row };
  if (row.state !== 'waiting') return { left: 'done' };
  if (row.notBefore && row.notBefore > now) return { left: 'later' };
  const answer = await askSilence(tx, row, now);
  if (!answer.send && answer.then === 'drop') {
    await tx.$executeRaw`UPDATE message SET state = 'dropped', detail = ${answer.reason}, done_at = ${now} WHERE id = ${id}::uuid`;
    return { left: 'dropped' };
  }
  if (!answer.send) {
    const again = new Date(now.getTime() + AGAIN_MINUTES * 60_000);
    await tx.$executeRaw`UPDATE message SET not_before = ${again}, detail = ${`waits: ${answer.reason}`} WHERE id = ${id}::uuid`;
    return { left: 'later' };
  }
  await tx.$executeRaw`UPDATE message SET state = 'claimed', claimed_at = ${now}, detail = NULL WHERE id = ${id}::uuid AND state = 'waiting'`;
  return { claimed: row };
}
