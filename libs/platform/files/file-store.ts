import type { Readable } from 'node:stream';
import type { Settings } from '../settings/settings.js';

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
  /** Removes what killed uploads left behind; tells how many files. */
  clearStaging(olderThan: Date): Promise<number>;
}

export async function openFileStore(settings: Pick<Settings, 'files' | 'dataFolder'>): Promise<FileStore> {
  if (settings.files.kind === 'disk') {
    const { DiskFileStore } = await import('./disk-file-store.js');
    return new DiskFileStore(settings.files.folder);
  }
  const { S3FileStore } = await import('./s3-file-store.js');
  return new S3FileStore(settings.files, settings.dataFolder);
}
