import type { ChannelKind } from '#libs/contracts/dispatch';
import type { WorkerDeps } from '../../worker-deps.js';
import type { Delivery } from '../delivery.js';
import type { Channel } from './channel.js';
import { dicomweb } from './dicomweb.js';
import { medium } from './medium.js';

/** What a practice has entered of its way to a centre. */
export interface Line { address: string | null; bucket: string | null; region: string | null; account: string | null; secret: string | null }

/** The adapter of a sending's channel. */
export async function openChannel(deps: WorkerDeps, delivery: Delivery): Promise<Channel> {
  return delivery.kind === 'media' ? medium(deps, delivery) : openLine(deps.outgoing, delivery.kind, delivery, delivery.summary.number);
}

/** That of one which is called. The contracts saw to it that nothing is missing. */
export async function openLine(outgoing: WorkerDeps['outgoing'], kind: Exclude<ChannelKind, 'link' | 'media'>, { address, bucket, region, account, secret }: Line, folder: string): Promise<Channel> {
  if (kind === 'dicomweb') return dicomweb(outgoing, { address: address!, account, secret });
  // the client of S3 is large, and most installations never need it
  const { objectStore } = await import('./object-store.js');
  return objectStore(outgoing, { address: address!, bucket: bucket!, region, account: account!, secret: secret! }, folder);
}
