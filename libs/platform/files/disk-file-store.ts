import { mkdir, open, readdir, rename, rm, stat, type FileHandle } from 'node:fs/promises';
import path from 'node:path';
import { pipeline, type Readable } from 'node:stream';
import { assertSha256, FileMissingError } from './file-errors.js';
import type { FileStore, StoredFile } from './file-store.js';
import { clearStaging, stage } from './staging.js';
import { orFull } from './storage-full.js';
import { verified } from './verified.js';

const isMissing = (error: unknown) => (error as NodeJS.ErrnoException).code === 'ENOENT';

export class DiskFileStore implements FileStore {
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = path.resolve(folder);
  }

  async put(source: AsyncIterable<Uint8Array>, limits: { maxBytes: number }): Promise<StoredFile> {
    const staged = await stage(source, this.#staging, limits.maxBytes);
    const target = this.#pathOf(staged.sha256);
    try {
      await mkdir(path.dirname(target), { recursive: true });
      // also over an older file of this name: should that be damaged, this mends it
      await rename(staged.path, target);
      await syncFolder(path.dirname(target));
    } catch (error) {
      await rm(staged.path, { force: true });
      throw orFull(error);
    }
    return { sha256: staged.sha256, size: staged.size };
  }

  async read(sha256: string): Promise<Readable> {
    const file = await this.#open(sha256);
    return pipeline(file.createReadStream(), verified(sha256), () => {
      // the reader of the returned stream is told of every error
    });
  }

  async exists(sha256: string): Promise<boolean> {
    try {
      return (await stat(this.#pathOf(sha256))).isFile();
    } catch (error) {
      if (isMissing(error)) return false;
      throw error;
    }
  }

  async *list(): AsyncIterable<string> {
    for (const folder of await namesIn(this.#folder, /^[0-9a-f]{2}$/)) {
      for (const rest of await namesIn(path.join(this.#folder, folder), /^[0-9a-f]{62}$/)) yield folder + rest;
    }
  }

  clearStaging(olderThan: Date): Promise<number> {
    return clearStaging(this.#staging, olderThan);
  }

  get #staging(): string {
    return path.join(this.#folder, 'incoming');
  }

  #pathOf(sha256: string): string {
    assertSha256(sha256);
    return path.join(this.#folder, sha256.slice(0, 2), sha256.slice(2));
  }

  async #open(sha256: string): Promise<FileHandle> {
    try {
      return await open(this.#pathOf(sha256));
    } catch (error) {
      throw isMissing(error) ? new FileMissingError(sha256) : error;
    }
  }
}

/** A store into which nothing was put has no folder yet. */
async function namesIn(folder: string, wanted: RegExp): Promise<string[]> {
  const names = await readdir(folder).catch((error: unknown) => {
    if (isMissing(error)) return [];
    throw error;
  });
  return names.filter((name) => wanted.test(name));
}

/** Without it a power cut may forget the new name although the bytes are there. */
async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder);
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
