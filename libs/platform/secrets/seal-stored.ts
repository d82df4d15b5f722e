import type { Db, Tx } from '../database/db.js';
import { aboutSecret } from './about.js';
import { SEALED, type SecretBox } from './secret-box.js';
import { SecretLostError } from './secret-lost-error.js';

interface Stored { id: string; secret: string; address?: string | null }
interface Store { read: (tx: Tx, not: string) => Promise<Stored[]>; write: (tx: Tx, row: Stored, sealed: string) => Promise<number>; about: (row: Stored) => string }

const webhook = ({ id }: Stored) => aboutSecret.webhook(id);
const STORES: Store[] = [
  {
    read: (tx, not) => tx.$queryRaw`SELECT s.channel_id AS id, s.secret, c.address FROM centre_channel_secret s JOIN centre_channel c ON c.id = s.channel_id WHERE s.secret NOT LIKE ${not}`,
    write: (tx, { id, secret }, sealed) => tx.$executeRaw`UPDATE centre_channel_secret SET secret = ${sealed} WHERE channel_id = ${id}::uuid AND secret = ${secret}`,
    about: ({ id, address }) => aboutSecret.channel(id, address),
  },
  {
    read: (tx, not) => tx.$queryRaw`SELECT id, secret FROM webhook WHERE secret NOT LIKE ${not}`,
    write: (tx, { id, secret }, sealed) => tx.$executeRaw`UPDATE webhook SET secret = ${sealed} WHERE id = ${id}::uuid AND secret = ${secret}`,
    about: webhook,
  },
  {
    read: (tx, not) => tx.$queryRaw`SELECT id, earlier_secret AS secret FROM webhook WHERE earlier_secret NOT LIKE ${not}`,
    write: (tx, { id, secret }, sealed) => tx.$executeRaw`UPDATE webhook SET earlier_secret = ${sealed} WHERE id = ${id}::uuid AND earlier_secret = ${secret}`,
    about: webhook,
  },
  {
    read: (tx, not) => tx.$queryRaw`SELECT id, secret FROM centre_key WHERE secret NOT LIKE ${not}`,
    write: (tx, { id, secret }, sealed) => tx.$executeRaw`UPDATE centre_key SET secret = ${sealed} WHERE id = ${id}::uuid AND secret = ${secret}`,
    about: ({ id }) => aboutSecret.centreKey(id),
  },
];

/**
 * Seals, by the key that seals now, every secret that was stored before secrets were sealed or under a key before. Done at each start of the worker: the
 * second time there is nothing to do. What no key opens stays as it is, and is counted.
 */
export async function sealStored(db: Db, box: SecretBox): Promise<{ sealed: number; lost: number }> {
  let [sealed, lost] = [0, 0];
  for (const { read, write, about } of STORES) {
    await db.system('seal stored secrets', async (tx) => {
      for (const row of await read(tx, `${SEALED}${box.keyId}.%`)) {
        try {
          sealed += await write(tx, row, box.seal(box.open(row.secret, about(row)), about(row)));
        } catch (error) {
          if (!(error instanceof SecretLostError)) throw error;
          lost += 1;
        }
      }
    });
  }
  return { sealed, lost };
}
