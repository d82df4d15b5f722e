import type { Readable } from 'node:stream';

export interface StoredFile {
  sha256: string;
  size: number;
}

/** Files named by what is in them: the same bytes are kept once and can never be changed unnoticed. */
export interface FileStore {
  put(source: AsyncIterable<Uint8Array>, limits: { maxBytes: number }): Promise<StoredFile>;
  /** The stream fails before its last bytes when what is kept is no longer what was put. */
  read(sha256: string): Promise<Readable>;
  exists(sha256: string): Promise<boolean>;
  /** Every file that is kept, in no order. */
  list(): AsyncIterable<string>;
  /** Removes what killed uploads left behind; tells how many files. */
  clearStaging(olderThan: Date): Promise<number>;
}
