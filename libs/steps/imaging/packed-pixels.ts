import { buffer } from 'node:stream/consumers';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { packPixels } from '#libs/contracts/film-pixels';
import { filmPixels } from '#libs/dicom/film-pixels';
import type { FileStore } from '#libs/platform/files/file-store';
import { notFound } from '../record/step-error.js';

const zip = promisify(gzip);

/** A film takes some hundred megabytes while it is unpacked: one after the other. */
let turn: Promise<unknown> = Promise.resolve();

/** What the screen draws a film from, gzipped; a film that cannot be shown has none. */
export function packedPixels(files: FileStore, film: { sha256: string; kind: string; previewSha: string | null }): Promise<Buffer> {
  if (!film.previewSha) throw notFound();
  const mine = turn.then(() => pack(files, film));
  turn = mine.catch(() => undefined);
  return mine;
}

async function pack(files: FileStore, { sha256, kind }: { sha256: string; kind: string }): Promise<Buffer> {
  const pixels = await filmPixels(await buffer(await files.read(sha256)), kind as 'dicom' | 'png' | 'jpeg');
  return zip(packPixels(pixels), { level: 4 });
}
