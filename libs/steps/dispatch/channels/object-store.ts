import { Readable } from 'node:stream';
import { HeadObjectCommand, PutObjectCommand, S3Client } from '@aws-sdk/client-s3';
import { getSignedUrl } from '@aws-sdk/s3-request-presigner';
import { said } from '#libs/words/said';
import { limitedText } from '#libs/platform/outgoing/limited-text';
import type { Outgoing } from '#libs/platform/outgoing/outgoing';
import { saidBy } from '#libs/platform/outgoing/said-by';
import { PermanentError, RetryableError } from '#libs/platform/queue/job-errors';
import { calling, refuseService } from './answer.js';
import { ItemRefusedError, type Channel, type Item } from './channel.js';

export interface ObjectStore { address: string; bucket: string; region?: string | null; account: string; secret: string }

const VALID_SECONDS = 900;
const HASH = 'x-amz-meta-sha256';
const REGION = 'us-east-1';
/** Looked for to see whether we may look, and never written. */
const NOTHING = 'cotyla-looks-whether-it-may-look';

/** The centre's object store (S3): each object goes to an address that is signed for it alone, in a folder named like the package. */
export function objectStore(outgoing: Pick<Outgoing, 'fetch'>, store: ObjectStore, folder: string): Channel {
  // signs only; every call goes through the guard
  const signer = new S3Client({
    endpoint: store.address, region: store.region ?? REGION, forcePathStyle: true, credentials: { accessKeyId: store.account, secretAccessKey: store.secret },
    requestChecksumCalculation: 'WHEN_REQUIRED', responseChecksumValidation: 'WHEN_REQUIRED',
  });
  const object = ({ file }: Item) => ({ Bucket: store.bucket, Key: `${folder}/${file}` });

  return {
    handsOver: true,

    async has(item, signal) {
      const url = await getSignedUrl(signer, new HeadObjectCommand(object(item)), { expiresIn: VALID_SECONDS });
      const answer = await calling(store.address, () => outgoing.fetch(url, { method: 'HEAD', signal }));
      if (answer.status === 404) return false;
      // some stores answer so to whoever may write and not look
      if (answer.status === 403) throw new PermanentError(said('The centre’s store does not let us see what is there: the keys are wrong, or may not read and list. A practice manager asks the centre, and enters the right ones under Practice.'));
      refuseService(store.address, answer);
      if (answer.status !== 200) throw new RetryableError(said('The centre’s store could not say what it has ({status}).', { status: String(answer.status) }));
      if (answer.headers.get(HASH) === item.sha256 && Number(answer.headers.get('content-length')) === item.size) return true;
      throw new ItemRefusedError(said('In the centre’s store lies another file named {file}. It was left as it is.', { file: `${folder}/${item.file}` }));
    },

    async greet(signal) {
      const url = await getSignedUrl(signer, new HeadObjectCommand({ Bucket: store.bucket, Key: NOTHING }), { expiresIn: VALID_SECONDS });
      const { status } = await outgoing.fetch(url, { method: 'HEAD', signal });
      return { answer: status === 200 || status === 404 ? 'reached' : saidBy(status), status };
    },

    async put(item, signal) {
      const command = new PutObjectCommand({ ...object(item), ContentLength: item.size, ContentType: 'application/dicom', Metadata: { sha256: item.sha256 } });
      const url = await getSignedUrl(signer, command, { expiresIn: VALID_SECONDS, unhoistableHeaders: new Set([HASH]), signableHeaders: new Set(['content-length', 'content-type']) });
      const answer = await calling(store.address, async () => outgoing.fetch(url, {
        method: 'PUT', signal, duplex: 'half', body: Readable.toWeb(await item.open()), headers: { 'Content-Length': String(item.size), 'Content-Type': 'application/dicom', [HASH]: item.sha256 },
      }));
      const told = await limitedText(answer);
      if (answer.status === 200 || answer.status === 201) return;
      refuseService(store.address, answer);
      const why = /<Message>([^<]{1,200})/.exec(told)?.[1] ?? said('it names no reason');
      throw new ItemRefusedError(said('The centre’s store refuses it: {why} ({status}).', { why, status: String(answer.status) }));
    },
  };
}
