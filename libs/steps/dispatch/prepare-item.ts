import { buffer } from 'node:stream/consumers';
import { copyForCentre } from '#libs/dicom/copy-for-centre';
import type { Copy } from '#libs/dicom/de-identify';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { WorkerDeps } from '../worker-deps.js';
import type { Item } from './channels/channel.js';
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

async function filmCopy({ files }: WorkerDeps, { summary }: Delivery, place: number, key: string): Promise<Copy> {
  const film = summary.films[place - 1]!;
  const { number, breed, sex, neutered } = summary.dog;
  const side = findProtocol(summary.study.protocol, summary.study.version)!.views.find((view) => view.code === film.view)?.side ?? 'both';
  return copyForCentre(await buffer(await files.read(film.image)), film.kind as 'dicom' | 'png' | 'jpeg', {
    key, number: summary.number, film: film.image, dog: { number, breed, sex: sex === 'male' ? 'male' : 'female', neutered },
    view: { code: film.view, label: film.viewName, side }, day: film.imageDay, instance: place,
  });
}
