import type { WorkerDeps } from '../../worker-deps.js';
import type { Delivery } from '../delivery.js';
import type { Channel } from './channel.js';
import { dicomweb } from './dicomweb.js';
import { medium } from './medium.js';

/** The adapter of a sending's channel. The contracts saw to it that nothing is missing. */
export async function openChannel(deps: WorkerDeps, delivery: Delivery): Promise<Channel> {
  const { kind, address, bucket, region, account, secret } = delivery;
  switch (kind) {
    case 'media': return medium(deps, delivery);
    case 'dicomweb': return dicomweb(deps.outgoing, { address: address!, account, secret });
    case 'objectStore': {
      // the client of S3 is large, and most installations never need it
      const { objectStore } = await import('./object-store.js');
      return objectStore(deps.outgoing, { address: address!, bucket: bucket!, region, account: account!, secret: secret! }, delivery.summary.number);
    }
  }
}
