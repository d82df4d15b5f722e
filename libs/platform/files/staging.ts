import { createHash, randomUUID } from 'node:crypto';
import { mkdir, open, readdir, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { FileTooLargeError } from './file-errors.js';
import type { StoredFile } from './file-store.js';
import { orFull } from './storage-full.js';

/** Writes to a file of its own and tells its hash; leaves nothing behind when the source breaks off. */
export async function stage(source: AsyncIterable<Uint8Array>, folder: string, maxBytes: number): Promise<StoredFile & { path: string }> {
  await mkdir(folder, { recursive: true }).catch((error: unknown) => {
    throw orFull(error);
  });
  const target = path.join(folder, randomUUID());
  const hash = createHash('sha256');
  let size = 0;
  try {
    const file = await open(target, 'wx', 0o640);
    try {
      for await (const chunk of source) {
        size += chunk.byteLength;
        if (size > maxBytes) throw new FileTooLargeError(maxBytes);
        hash.update(chunk);
        await file.writeFile(chunk);
      }
      await file.sync();
    } finally {
      await file.close();
    }
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
