import { buffer } from 'node:stream/consumers';
import { copyForCentre } from '#libs/dicom/copy-for-centre';
import type { Copy } from '#libs/dicom/de-identify';
import type { FileStore } from '#libs/platform/files/file-store';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { PackageSummary } from './seal-package.js';

/** A film of a package as a DICOM file for the centre; `place` counts from 1. */
export async function copyOfFilm(files: FileStore, { films, number, dog, study }: PackageSummary, place: number, { key, unpack = false }: { key: string; unpack?: boolean }): Promise<Copy> {
  const film = films[place - 1]!;
  const { number: dogNumber, breed, sex, neutered } = dog;
  const side = findProtocol(study.protocol, study.version)!.views.find((view) => view.code === film.view)?.side ?? 'both';
  return copyForCentre(await buffer(await files.read(film.image)), film.kind as 'dicom' | 'png' | 'jpeg', {
    key, unpack, number, film: film.image, dog: { number: dogNumber, breed, sex: sex === 'male' ? 'male' : 'female', neutered },
    view: { code: film.view, label: film.viewName, side }, day: film.imageDay, instance: place, stated: film.stated,
  });
}
