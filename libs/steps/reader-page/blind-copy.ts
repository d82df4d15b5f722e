import { buffer } from 'node:stream/consumers';
import type { FileStore } from '#libs/platform/files/file-store';
import { copyOfFilm } from '../dispatch/copy-of-film.js';
import type { ReaderPackage } from './packages.js';

/** An X-ray machine writes into its file whose dog it is; the centre reads blind. A picture carries nothing of the kind, and stays one unless people have said how large its pixels are. */
export async function blindCopy(files: FileStore, { id, summary }: ReaderPackage, i: number): Promise<{ kind: string; content: Buffer }> {
  const { kind, image, stated } = summary.films[i]!;
  if (kind !== 'dicom' && !stated) return { kind, content: await buffer(await files.read(image)) };
  return { kind: 'dicom', content: Buffer.concat((await copyOfFilm(files, summary, i + 1, { key: id })).content) };
}
