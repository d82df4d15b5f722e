import { createHash, randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdir, readdir, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { FileTooLargeError } from './file-errors.js';
import type { StoredFile } from './file-store.js';
import { orFull } from './storage-full.js';

const AT_ONCE = 1024 * 1024;

/** Writes to a file of its own and tells its hash; leaves nothing behind when the source breaks off. */
export async function stage(source: AsyncIterable<Uint8Array>, folder: string, maxBytes: number): Promise<StoredFile & { path: string }> {
  await mkdir(folder, { recursive: true }).catch((error: unknown) => {
    throw orFull(error);
  });
  const target = path.join(folder, randomUUID());
  const hash = createHash('sha256');
  let size = 0;
  async function* counted(chunks: AsyncIterable<Uint8Array>) {
    for await (const chunk of chunks) {
      size += chunk.byteLength;
      if (size > maxBytes) throw new FileTooLargeError(maxBytes);
      hash.update(chunk);
      yield chunk;
    }
  }
  try {
    await pipeline(source, counted, createWriteStream(target, { flags: 'wx', mode: 0o640, highWaterMark: AT_ONCE, flush: true }));
  } catch (error) {
    await rm(target, { force: true });
    throw orFull(error);
  }
  return { path: target, sha256: hash.digest('hex'), size };
}

/** Removes what killed uploads left; young files may belong to uploads that still run. */
export async function clearStaging(folder: string, olderThan: Date): Promise<number> {
  await mkdir(folder, { recursive: true });
  let removed = 0;
  for (const name of await readdir(folder)) {
    const file = path.join(folder, name);
    if ((await stat(file)).mtime >= olderThan) continue;
    await rm(file, { force: true });
    removed += 1;
  }
  return removed;
}
