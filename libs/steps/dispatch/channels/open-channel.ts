import type { ChannelKind } from '#libs/contracts/dispatch';
import { PermanentError } from '#libs/platform/queue/job-errors';
import { aboutSecret } from '#libs/platform/secrets/about';
import { SecretLostError } from '#libs/platform/secrets/secret-lost-error';
import type { WorkerDeps } from '../../worker-deps.js';
import type { Delivery } from '../delivery.js';
import type { Channel } from './channel.js';
import { dicomweb } from './dicomweb.js';
import { medium } from './medium.js';

/** What a practice has entered of its way to a centre; the secret as it is stored. */
export interface Line { channel: string; address: string | null; bucket: string | null; region: string | null; account: string | null; secret: string | null }

/** The adapter of a sending's channel. */
export async function openChannel(deps: WorkerDeps, delivery: Delivery): Promise<Channel> {
  if (delivery.kind === 'media') return medium(deps, delivery);
  try {
    return await openLine(deps, delivery.kind, delivery, delivery.summary.number);
  } catch (error) {
    throw error instanceof SecretLostError ? new PermanentError(`The password of this channel is lost. ${error.message}`, { cause: error }) : error;
  }
}

/** That of one which is called. The contracts saw to it that nothing is missing. */
export async function openLine({ outgoing, secrets }: Pick<WorkerDeps, 'outgoing' | 'secrets'>, kind: Exclude<ChannelKind, 'link' | 'media'>, line: Line, folder: string): Promise<Channel> {
  const { address, bucket, region, account } = line;
  const secret = line.secret === null ? null : secrets.open(line.secret, aboutSecret.channel(line.channel, address));
  if (kind === 'dicomweb') return dicomweb(outgoing, { address: address!, account, secret });
  // the client of S3 is large, and most installations never need it
  const { objectStore } = await import('./object-store.js');
  return objectStore(outgoing, { address: address!, bucket: bucket!, region, account: account!, secret: secret! }, folder);
}
