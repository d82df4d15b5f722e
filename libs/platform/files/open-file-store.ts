import type { Settings } from '../settings/settings.js';
import { DiskFileStore } from './disk-file-store.js';
import type { FileStore } from './file-store.js';

export async function openFileStore(settings: Pick<Settings, 'files' | 'dataFolder'>): Promise<FileStore> {
  if (settings.files.kind === 'disk') return new DiskFileStore(settings.files.folder);
  // the client of S3 is large, and most installations never need it
  const { S3FileStore } = await import('./s3-file-store.js');
  return new S3FileStore(settings.files, settings.dataFolder);
}
