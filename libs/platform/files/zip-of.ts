import { createHash } from 'node:crypto';
import type { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import yazl from 'yazl';

export interface ZipEntry {
  name: string;
  /** Bytes, or where they are read from when the zip gets to them. */
  content: Buffer | (() => Promise<Readable>);
}

/** A zip with a list of its files and their hashes as its last file; breaks off, and so cannot be opened, when a file cannot be read. */
export function zipOf(entries: ZipEntry[], mtime: Date): Readable {
  const zip = new yazl.ZipFile();
  void (async () => {
    const files: { file: string; sha256: string; bytes: number }[] = [];
    for (const { name, content } of entries) {
      const bytes = Buffer.isBuffer(content) ? content : await buffer(await content());
      files.push({ file: name, sha256: createHash('sha256').update(bytes).digest('hex'), bytes: bytes.length });
      zip.addBuffer(bytes, name, { mtime });
    }
    zip.addBuffer(asJson({ files }), 'manifest.json', { mtime });
    zip.end();
  })().catch((error: Error) => (zip.outputStream as Readable).destroy(error));
  return zip.outputStream as Readable;
}

export const asJson = (value: unknown): Buffer => Buffer.from(JSON.stringify(value, null, 2));

/** A name that every system can unpack. */
export const fileName = (words: string): string => words.replace(/[^\p{L}\p{N}. -]/gu, '_').slice(0, 80);
export const extensionOf = (kind: string): string => ({ png: 'png', jpeg: 'jpg', dicom: 'dcm' })[kind] ?? 'bin';
