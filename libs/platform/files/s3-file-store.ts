import { createReadStream } from 'node:fs';
import { rm } from 'node:fs/promises';
import path from 'node:path';
import { pipeline, Readable } from 'node:stream';
import { GetObjectCommand, HeadObjectCommand, paginateListObjectsV2, S3Client, S3ServiceException } from '@aws-sdk/client-s3';
import { Upload } from '@aws-sdk/lib-storage';
import type { FileSettings } from '../settings/settings.js';
import { assertSha256, FileMissingError } from './file-errors.js';
import type { FileStore, StoredFile } from './file-store.js';
import { s3Client } from './s3-client.js';
import { clearStaging, stage } from './staging.js';
import { orFull } from './storage-full.js';
import { verified } from './verified.js';

const isMissing = (error: unknown) => error instanceof S3ServiceException && error.$metadata.httpStatusCode === 404;

export class S3FileStore implements FileStore {
  readonly #client: S3Client;
  readonly #bucket: string;
  readonly #staging: string;

  /** A file's name is known only when all of it was read, so it waits in the data folder until then. */
  constructor(settings: Extract<FileSettings, { kind: 's3' }>, dataFolder: string) {
    this.#client = s3Client(settings);
    this.#bucket = settings.bucket;
    this.#staging = path.join(dataFolder, 'incoming');
  }

  async put(source: AsyncIterable<Uint8Array>, limits: { maxBytes: number }): Promise<StoredFile> {
    const staged = await stage(source, this.#staging, limits.maxBytes);
    try {
      const params = { ...this.#object(staged.sha256), Body: createReadStream(staged.path) };
      await new Upload({ client: this.#client, params }).done();
    } catch (error) {
      throw orFull(error);
    } finally {
      await rm(staged.path, { force: true });
    }
    return { sha256: staged.sha256, size: staged.size };
  }

  async read(sha256: string): Promise<Readable> {
    try {
      const { Body } = await this.#client.send(new GetObjectCommand(this.#object(sha256)));
      return pipeline(Body as Readable, verified(sha256), () => {
        // the reader of the returned stream is told of every error
      });
    } catch (error) {
      throw isMissing(error) ? new FileMissingError(sha256) : error;
    }
  }

  async exists(sha256: string): Promise<boolean> {
    try {
      await this.#client.send(new HeadObjectCommand(this.#object(sha256)));
      return true;
    } catch (error) {
      if (isMissing(error)) return false;
      throw error;
    }
  }

  async *list(): AsyncIterable<string> {
    for await (const page of paginateListObjectsV2({ client: this.#client }, { Bucket: this.#bucket })) {
      for (const { Key } of page.Contents ?? []) if (Key && /^[0-9a-f]{2}\/[0-9a-f]{62}$/.test(Key)) yield Key.replace('/', '');
    }
  }

  clearStaging(olderThan: Date): Promise<number> {
    return clearStaging(this.#staging, olderThan);
  }

  #object(sha256: string): { Bucket: string; Key: string } {
    assertSha256(sha256);
    return { Bucket: this.#bucket, Key: `${sha256.slice(0, 2)}/${sha256.slice(2)}` };
  }
}
