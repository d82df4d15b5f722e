import { buffer } from 'node:stream/consumers';
import { mediaDirectory, mediaName, type MediaFile } from '#libs/dicom/media-directory';
import { PIXELS, readHead } from '#libs/dicom/read-data-set';
import { uidOf } from '#libs/dicom/uids';
import { zipOf, type ZipEntry } from '#libs/platform/files/zip-of';
import { lockOrder } from '../../record/order-record.js';
import type { WorkerDeps } from '../../worker-deps.js';
import type { Delivery } from '../delivery.js';
import { mailPackage } from '../mail-package.js';
import type { Channel, Item } from './channel.js';

const MOST_BYTES = 4 * 1024 * 1024 * 1024;

/** A DICOM medium (PS3.10): one zip with DICOMDIR and the films, kept here until the centre fetches it by the link of a mail. */
export function medium(deps: WorkerDeps, { send, order, package: sealed, study, centre, summary, manifest }: Delivery): Channel {
  return {
    handsOver: false,
    has: ({ sha256 }) => deps.files.exists(sha256),
    put: () => Promise.resolve(), // the copy is the medium's file
    async finish(items) {
      const zip = zipOf(await entriesOf(items, uidOf(send)), FIXED_TIME);
      const { sha256 } = await deps.files.put(zip, { maxBytes: MOST_BYTES });
      await deps.db.system('mail a medium', async (tx) => {
        const record = await lockOrder(tx, order);
        const wanted = await tx.$executeRaw`UPDATE delivery SET zip_sha = ${sha256} WHERE send_id = ${send}::uuid AND state IN ('open', 'stopped')`;
        if (record && wanted > 0) await mailPackage({ tx, order: record }, { send, package: sealed, study, centre }, manifest, summary);
      });
    },
  };
}

/** The same films are the same zip. */
const FIXED_TIME = new Date(1980, 0, 1);

async function entriesOf(items: Item[], fileSet: string): Promise<ZipEntry[]> {
  const files: MediaFile[] = [];
  for (const [i, item] of items.entries()) files.push({ name: mediaName(i + 1), head: headOf(await buffer(await item.open())) });
  return [
    { name: 'DICOMDIR', content: mediaDirectory(files, fileSet) },
    ...items.map((item, i) => ({ name: files[i]!.name, content: item.open })),
  ];
}

/** A copy, so that the pixels are let go. */
const headOf = (content: Buffer): Buffer => Buffer.from(content.subarray(0, readHead(content).elements[PIXELS]!.dataOffset));
