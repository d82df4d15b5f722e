import { storeImage } from '#libs/steps/imaging/store-image';
import type { FilmKind } from '../films.js';
import { factsOf, type Road } from './road.js';

/** A film drawn for this dog, uploaded as from the X-ray table; answers its hash. */
export async function uploadFilm(road: Road, view: string, kind: FilmKind): Promise<string> {
  const { driver: { db, files, films, publicUrl }, dog, clock, order, lane, accession } = road;
  const number = factsOf(road, 'exposureTaken').length + 1;
  const content = await films.film(view, kind, [dog.transponder, `picture ${number}`, clock.now().toISOString().slice(0, 10)]);
  const source = (async function* () { yield content; })();
  const stored = await storeImage({ db, files, clock, publicUrl }, lane.operator, order, { source, fileName: `${accession}-${number}.png` });
  return stored.image;
}
