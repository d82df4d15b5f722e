import { asErrorBody } from './client.js';
import { ApiFailure, noAnswer } from './failure.js';

export interface Fetched {
  content: Blob;
  name: string;
}

/** How many bytes have come; of how many, where the server can know that before it has made the file. */
export type SoFar = { bytes: number; of: number | undefined };

/** A file that the server makes on being asked. It is whole, or there is none. */
export async function fetchFile(path: string, name: string | undefined, onPart: (soFar: SoFar) => void, signal: AbortSignal): Promise<Fetched> {
  try {
    const reply = await fetch(`/api${path}`, { credentials: 'same-origin', signal });
    if (!reply.ok) throw new ApiFailure(reply.status, asErrorBody(await reply.json().catch(() => null)));
    // What was packed for the way is counted unpacked here.
    const of = Number(reply.headers.get('x-about-bytes') ?? (reply.headers.has('content-encoding') ? 0 : reply.headers.get('content-length'))) || undefined;
    const parts: Uint8Array<ArrayBuffer>[] = [];
    let bytes = 0;
    const reader = reply.body!.getReader();
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      parts.push(next.value);
      bytes += next.value.length;
      onPart({ bytes, of });
    }
    return { content: new Blob(parts, { type: reply.headers.get('content-type') ?? '' }), name: name ?? nameIn(reply.headers.get('content-disposition')) };
  } catch (error) {
    if (error instanceof ApiFailure || signal.aborted) throw error;
    throw noAnswer();
  }
}

const nameIn = (disposition: string | null): string => /filename="([^"]+)"/.exec(disposition ?? '')?.[1] ?? 'file';
