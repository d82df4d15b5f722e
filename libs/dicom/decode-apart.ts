import { Worker } from 'node:worker_threads';
import type { Codec } from './syntaxes.js';

/** A film of 9 million pixels takes about 1.5 seconds in the slowest of the codecs. */
const MOST_MS = 60_000;
const MOST_MEMORY = { maxOldGenerationSizeMb: 1024 };

/** The decoded bytes, made in a thread that lives for this one picture: nothing of a bad stream stays behind in it. */
export function decodeApart(codec: Codec, stream: Uint8Array): Promise<Uint8Array> {
  const thread = new Worker(new URL('./decode-thread.mjs', import.meta.url), { workerData: { codec, stream: Uint8Array.from(stream) }, resourceLimits: MOST_MEMORY });
  return new Promise<Uint8Array>((resolve, reject) => {
    const late = setTimeout(() => reject(new Error('the decoder took too long')), MOST_MS);
    thread.on('message', resolve);
    thread.on('error', (error: unknown) => reject(error instanceof Error ? error : new Error(String(error))));
    thread.on('exit', (code) => {
      clearTimeout(late);
      reject(new Error(`the decoder ended with ${code}`));
    });
  }).finally(() => thread.terminate());
}
