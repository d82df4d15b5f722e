import type { Copy } from '#libs/dicom/de-identify';
import { CannotUnpackError } from '#libs/dicom/uncompressed';
import { said } from '#libs/words/said';
import type { WorkerDeps } from '../worker-deps.js';
import { ItemRefusedError, type Item } from './channels/channel.js';
import { copyOfFilm } from './copy-of-film.js';
import { timesCalledBack, type Delivery, type ItemRow } from './delivery.js';
import { deliveryKey } from './delivery-key.js';
import { noteCopy } from './note-copy.js';

const MOST_BYTES = 512 * 1024 * 1024;

/** The copy of a film that leaves the house: made once, kept, and the same bytes at every try. */
export async function prepareItem(deps: WorkerDeps, delivery: Delivery, row: ItemRow): Promise<Item> {
  if (row.sentSha === null) Object.assign(row, await keepCopy(deps, delivery, row));
  const { name, place, sopClass, sopUid, studyUid, sentSha, size } = row;
  return { name, file: `${String(place).padStart(2, '0')}.dcm`, sopClass: sopClass!, sopUid: sopUid!, studyUid: studyUid!, sha256: sentSha!, size: size!, open: () => deps.files.read(sentSha!) };
}

async function keepCopy(deps: WorkerDeps, delivery: Delivery, { place }: ItemRow): Promise<Pick<ItemRow, 'sopClass' | 'sopUid' | 'studyUid' | 'seriesUid' | 'sentSha' | 'size'>> {
  const { practice, centre, send, note } = delivery;
  const key = await deps.db.system('keep the key of a centre', (tx) => deliveryKey(tx, practice, centre));
  const copy = note ? noteCopy(delivery, note, key, deps.clock.now()) : await filmCopy(deps, delivery, place, await keyForFilm(deps, delivery, place, key));
  const { sha256, size } = await deps.files.put(copy.content as unknown as AsyncIterable<Uint8Array>, { maxBytes: MOST_BYTES });
  const row = { sopClass: copy.sopClassUid, sopUid: copy.sopInstanceUid, studyUid: copy.studyUid, seriesUid: copy.seriesUid, sentSha: sha256, size };
  await deps.db.system('keep the copy of a film', (tx) => tx.deliveryItem.update({ where: { sendId_place: { sendId: send, place } }, data: row }));
  return row;
}

/** What an archive was told not to use any more comes back to it under other numbers, or it would stay hidden there. */
async function keyForFilm({ db }: WorkerDeps, delivery: Delivery, place: number, key: string): Promise<string> {
  const times = await db.system('look how often a film was called back', (tx) => timesCalledBack(tx, delivery, delivery.summary.films[place - 1]!.image));
  return times === 0 ? key : `${key} ${times}`;
}

/** A DICOM medium of general purpose holds films that are not compressed, and no others. */
async function filmCopy({ files }: WorkerDeps, { kind, summary }: Delivery, place: number, key: string): Promise<Copy> {
  try {
    return await copyOfFilm(files, summary, place, { key, unpack: kind === 'media' });
  } catch (error) {
    if (!(error instanceof CannotUnpackError)) throw error;
    throw new ItemRefusedError(said('It is compressed in a way that cannot be unpacked here, and a DICOM medium holds uncompressed films only. Send the package by another way; a practice manager enters it under Practice.'));
  }
}
