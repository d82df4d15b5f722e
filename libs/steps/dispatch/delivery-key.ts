import { randomBytes } from 'node:crypto';
import type { Tx } from '#libs/platform/database/db';

/** The secret that numbers of copies for this centre are made with: made once, and the same ever after. */
export async function deliveryKey(tx: Tx, practice: string, centre: string): Promise<string> {
  await tx.$executeRaw`INSERT INTO delivery_key (practice_id, centre_id, key) VALUES (${practice}::uuid, ${centre}::uuid, ${randomBytes(32).toString('hex')}) ON CONFLICT DO NOTHING`;
  const [row] = await tx.$queryRaw<{ key: string }[]>`SELECT key FROM delivery_key WHERE practice_id = ${practice}::uuid AND centre_id = ${centre}::uuid`;
  return row!.key;
}
