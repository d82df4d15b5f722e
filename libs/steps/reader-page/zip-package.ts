import type { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import yazl from 'yazl';
import type { FileStore } from '#libs/platform/files/file-store';
import type { ReaderPackage } from './packages.js';

const EXTENSION: Record<string, string> = { png: 'png', jpeg: 'jpg', dicom: 'dcm' };

/** Images, manifest with hashes, order summary. Each film is read when the zip gets to it, and verified. */
export function zipPackage(files: FileStore, p: ReaderPackage): Readable {
  const zip = new yazl.ZipFile();
  // A fixed time: the same package is the same zip.
  const mtime = new Date(p.sentAt);
  const names = p.summary.films.map((f, i) => `${String(i + 1).padStart(2, '0')}-${f.view}-${f.attempt}.${EXTENSION[f.kind] ?? 'bin'}`);
  const { films, ...summary } = p.summary;
  zip.addBuffer(Buffer.from(JSON.stringify(summary, null, 2)), 'summary.json', { mtime });
  zip.addBuffer(Buffer.from(JSON.stringify({ manifest: p.manifest, films: films.map((f, i) => ({ file: names[i], sha256: f.image, size: f.size, view: f.view, attempt: f.attempt, accepted: f.accepted })) }, null, 2)), 'manifest.json', { mtime });
  void (async () => {
    for (const [i, film] of films.entries()) zip.addBuffer(await buffer(await files.read(film.image)), names[i]!, { mtime, compress: false });
    zip.end();
  })().catch((error: Error) => (zip.outputStream as Readable).destroy(error));
  return zip.outputStream as Readable;
}
