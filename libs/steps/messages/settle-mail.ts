import type { Tx } from '#libs/platform/database/db';

/** A person has said whether a mail came of which nobody knew; it is not asked about a second time. */
export async function settleMail(tx: Tx, onceKey: string, arrived: boolean): Promise<void> {
  await tx.message.updateMany({ where: { onceKey, state: 'unknown' }, data: { state: arrived ? 'delivered' : 'bounced', detail: 'said by a person' } });
}
