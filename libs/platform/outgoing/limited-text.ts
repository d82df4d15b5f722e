import type { Response } from 'undici';

const MOST_BYTES = 4 * 1024 * 1024;

/** An answer's words; whoever answers with more than this is not listened to. */
export async function limitedText(answer: Response): Promise<string> {
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of answer.body ?? []) {
    size += (part as Uint8Array).byteLength;
    if (size > MOST_BYTES) throw new Error('The answer was too long and was not read to its end.');
    parts.push(part as Uint8Array);
  }
  return Buffer.concat(parts).toString('utf8');
}
