import { servedBy } from '../imaging/film-of.js';
import type { Work } from '../record/work.js';

export interface Film {
  exposure: string;
  view: string;
  image: string;
  imageDay: string;
  attempt: number;
  accepted: boolean;
  reasons: string[];
  marker: string | null;
}

/** Every film taken for a study, retakes too, without those that are no pictures of this dog. */
export function filmsOf(work: Work, study: string): Film[] {
  const disowned = new Set(work.facts('exposureDisowned').map((f) => f.exposure));
  const lost = new Set(work.facts('imagesLost').flatMap((f) => f.exposures));
  const verdicts = new Map(work.facts('verdictGiven').filter((f) => f.study === study).map((f) => [f.exposure, f]));
  const attempts = new Map<string, number>();
  return work.facts('exposureTaken')
    .filter((f) => servedBy(work, f.exposure).includes(study) && !disowned.has(f.exposure) && !lost.has(f.exposure))
    .map((f) => {
      const attempt = (attempts.get(f.view) ?? 0) + 1;
      attempts.set(f.view, attempt);
      const verdict = verdicts.get(f.exposure);
      return { exposure: f.exposure, view: f.view, image: f.image, imageDay: f.imageDay, attempt, accepted: verdict?.verdict === 'accept', reasons: verdict?.verdict === 'undecided' ? [] : (verdict?.reasons ?? []), marker: (f.detail?.marker as string | undefined) ?? null };
    });
}
