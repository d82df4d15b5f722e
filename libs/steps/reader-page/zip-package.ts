import { createHash } from 'node:crypto';
import type { Readable } from 'node:stream';
import yazl from 'yazl';
import type { FileStore } from '#libs/platform/files/file-store';
import { asJson, extensionOf } from '#libs/platform/files/zip-of';
import { blindCopy } from './blind-copy.js';
import type { ReaderPackage } from './packages.js';

/** About how many bytes it will have: films are not packed any smaller, a picture that goes as DICOM is unpacked, and what is beside them is little. */
export const sizeOfZip = (p: ReaderPackage): number => p.summary.films.reduce((sum, { size, stated, width, height }) => sum + (stated ? Math.max(size, width * height) : size), 0);

/** What the centre downloads: the medium that was made for it, or the films and what they are. */
export const zipFor = async (files: FileStore, p: ReaderPackage): Promise<Readable> => (p.medium ? files.read(p.medium) : zipPackage(files, p));

/** Images, order summary, manifest with hashes. Each film is read when the zip gets to it, and verified. */
function zipPackage(files: FileStore, p: ReaderPackage): Readable {
  const zip = new yazl.ZipFile();
  // A fixed time: the same package is the same zip.
  const mtime = new Date(p.sentAt);
  const { films, ...summary } = p.summary;
  zip.addBuffer(asJson(summary), 'summary.json', { mtime });
  void (async () => {
    const listed = [];
    for (const [i, film] of films.entries()) {
      const { kind, content } = await blindCopy(files, p, i);
      const file = `${String(i + 1).padStart(2, '0')}-${film.view}-${film.attempt}.${extensionOf(kind)}`;
      zip.addBuffer(content, file, { mtime, compress: false });
      listed.push({ file, sha256: sha256(content), sealed: film.image, size: content.length, view: film.view, attempt: film.attempt, accepted: film.accepted });
    }
    zip.addBuffer(asJson({ manifest: p.manifest, films: listed }), 'manifest.json', { mtime });
    zip.end();
  })().catch((error: Error) => (zip.outputStream as Readable).destroy(error));
  return zip.outputStream as Readable;
}

const sha256 = (content: Buffer): string => createHash('sha256').update(content).digest('hex');
