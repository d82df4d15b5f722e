import type { Collected } from './collect.js';
import type { FactOf } from './facts.js';

/** An exposure as it counts now. */
export interface Film {
  id: string;
  visit: string;
  view: string;
  day: string;
  taken: FactOf<'exposureTaken'>;
  serves: string[];
  disowned: boolean;
  lost: boolean;
  /** The image names another dog or day, and nobody has settled it yet. */
  mismatched: boolean;
  peopleKnown: boolean;
  /** Of a PNG or JPEG whose pixels are said to have a size. */
  size: FactOf<'filmSized'>['size'];
  /** It lies in a package, as it was then. */
  sealed: boolean;
}

export function filmsOf(collected: Collected): Film[] {
  const sealed = new Set([...collected.studies.values()].flatMap(({ facts }) => facts.all('packageSealed').flatMap((pack) => pack.exposures)));
  return [...collected.exposures.values()].map(({ id, taken, facts }) => ({
    id, taken,
    visit: taken.visit,
    view: taken.view,
    day: taken.imageDay,
    serves: facts.last('exposureAssigned')?.serves ?? taken.serves,
    disowned: facts.has('exposureDisowned'),
    lost: facts.has('imagesLost'),
    mismatched: facts.last('imageChecked')?.match === false,
    size: facts.last('filmSized')?.size ?? null,
    sealed: sealed.has(id),
    peopleKnown: taken.people.length > 0 || facts.all('roomLogged').some((log) => log.people.length > 0),
  }));
}

/** A film that can be judged and read. */
export const stands = (film: Film): boolean => !film.disowned && !film.lost && !film.mismatched;
