import { createHash } from 'node:crypto';
import type { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import yazl from 'yazl';
import { deIdentify } from '#libs/dicom/de-identify';
import type { FileStore } from '#libs/platform/files/file-store';
import { asJson, extensionOf } from '#libs/platform/files/zip-of';
import type { PackageSummary } from '../dispatch/seal-package.js';
import type { ReaderPackage } from './packages.js';

/** About how many bytes it will have: films are not packed any smaller, and what is beside them is little. */
export const sizeOfZip = (p: ReaderPackage): number => p.summary.films.reduce((sum, film) => sum + film.size, 0);

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
      const file = `${String(i + 1).padStart(2, '0')}-${film.view}-${film.attempt}.${extensionOf(film.kind)}`;
      const content = blindCopy(await buffer(await files.read(film.image)), p, film);
      zip.addBuffer(content, file, { mtime, compress: false });
      listed.push({ file, sha256: sha256(content), sealed: film.image, size: content.length, view: film.view, attempt: film.attempt, accepted: film.accepted });
    }
    zip.addBuffer(asJson({ manifest: p.manifest, films: listed }), 'manifest.json', { mtime });
    zip.end();
  })().catch((error: Error) => (zip.outputStream as Readable).destroy(error));
  return zip.outputStream as Readable;
}

/** An X-ray machine writes into its file whose dog it is; the centre reads blind. A picture carries nothing of the kind. */
function blindCopy(content: Buffer, { id, summary }: ReaderPackage, film: PackageSummary['films'][number]): Buffer {
  if (film.kind !== 'dicom') return content;
  const { number, breed, sex, neutered } = summary.dog;
  const copy = deIdentify(content, { key: id, number: summary.number, film: film.image, dog: { number, breed, sex: sex === 'male' ? 'male' : 'female', neutered }, view: { code: film.view, label: film.viewName } });
  return Buffer.concat(copy.content);
}

const sha256 = (content: Buffer): string => createHash('sha256').update(content).digest('hex');
