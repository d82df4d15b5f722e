import { Readable } from 'node:stream';
import { newUid } from '#libs/dicom/uids';
import { said } from '#libs/words/said';
import { limitedText } from '#libs/platform/outgoing/limited-text';
import type { Outgoing } from '#libs/platform/outgoing/outgoing';
import { saidBy } from '#libs/platform/outgoing/said-by';
import { RetryableError } from '#libs/platform/queue/job-errors';
import { calling, refuseService } from './answer.js';
import { ItemRefusedError, type Channel, type Item } from './channel.js';
import { isPassing, reasonWords, storeAnswer } from './store-answer.js';

const BOUNDARY = 'cotyla-film';
const BEFORE = Buffer.from(`--${BOUNDARY}\r\nContent-Type: application/dicom\r\n\r\n`);
const AFTER = Buffer.from(`\r\n--${BOUNDARY}--\r\n`);
const JSON_TYPE = 'application/dicom+json';

export interface DicomwebService { address: string; account?: string | null; secret?: string | null }

/** The centre's archive by DICOMweb (PS3.18): STOW-RS brings an object, QIDO-RS tells whether it is there. */
export function dicomweb(outgoing: Pick<Outgoing, 'fetch'>, service: DicomwebService): Channel {
  const base = service.address.replace(/\/+$/, '');
  const headers = { Accept: JSON_TYPE, ...signIn(service) };

  return {
    handsOver: true,

    async has({ studyUid, sopUid }, signal) {
      const address = `${base}/studies/${studyUid}/instances?SOPInstanceUID=${sopUid}&limit=1`;
      const answer = await calling(address, () => outgoing.fetch(address, { headers, signal }));
      const text = await limitedText(answer);
      // an archive that has nothing of a study answers in any of these ways
      if (answer.status === 204 || (answer.status === 404 && !isPage(answer))) return false;
      refuseService(base, answer);
      if (answer.status !== 200) throw new RetryableError(said('The centre’s archive could not say what it has ({status}).', { status: String(answer.status) }));
      return listed(text).includes(sopUid);
    },

    async greet(signal) {
      // a study that nobody has: the answer holds no dog of theirs, and the question none of ours
      const address = `${base}/studies?StudyInstanceUID=${newUid()}&limit=1`;
      const answer = await outgoing.fetch(address, { headers, signal });
      await answer.body?.cancel();
      const { status } = answer;
      if (isPage(answer)) return { answer: status === 401 || status === 403 ? 'refused' : 'noService', status };
      return { answer: status === 200 || status === 204 ? 'reached' : saidBy(status), status };
    },

    async put(item, signal) {
      const address = `${base}/studies/${item.studyUid}`;
      const answer = await calling(address, async () => outgoing.fetch(address, {
        method: 'POST', signal, duplex: 'half', body: Readable.toWeb(Readable.from(framed(item))),
        headers: { ...headers, 'Content-Type': `multipart/related; type="application/dicom"; boundary=${BOUNDARY}`, 'Content-Length': String(BEFORE.length + item.size + AFTER.length) },
      }));
      const stored = storeAnswer(jsonOrNothing(await limitedText(answer)), item.sopUid);
      if (stored?.stored) return;
      if (stored && isPassing(stored.reason)) throw new RetryableError(said('The centre’s archive has no room now ({why}).', { why: reasonWords(stored.reason) }));
      if (stored) throw new ItemRefusedError(said('The centre’s archive refuses it: {why}.', { why: reasonWords(stored.reason) }));
      if (answer.status === 200 || answer.status === 202) return; // says nothing of it: the question afterwards decides
      refuseService(base, answer);
      throw new ItemRefusedError(said('The centre’s archive refuses it and gives no reason ({status}).', { status: String(answer.status) }));
    },
  };
}

async function* framed(item: Item): AsyncGenerator<Uint8Array> {
  yield BEFORE;
  yield* (await item.open()) as AsyncIterable<Uint8Array>;
  yield AFTER;
}

function signIn({ account, secret }: DicomwebService): Record<string, string> {
  if (!secret) return {};
  return { Authorization: account ? `Basic ${Buffer.from(`${account}:${secret}`).toString('base64')}` : `Bearer ${secret}` };
}

/** A web server that knows no such address answers with a page; an archive that knows no such study does not. */
const isPage = (answer: { headers: { get(name: string): string | null } }): boolean => /html/.test(answer.headers.get('content-type') ?? '');

function listed(text: string): unknown[] {
  const rows = jsonOrNothing(text);
  return Array.isArray(rows) ? rows.map((row: Record<string, { Value?: unknown[] }>) => row['00080018']?.Value?.[0]) : [];
}

function jsonOrNothing(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
