import { filmsOf } from '../dispatch/films-of.js';
import type { Work } from '../record/work.js';
import { protocolOf } from '../result/check-joints.js';

/** Views that a visit was for and that no accepted film shows, by name and once each. */
export function missingViews(work: Work, visit: string): string[] {
  const names = (work.evaluation.visits[visit]?.studies ?? []).flatMap((study) => {
    const films = filmsOf(work, study);
    return protocolOf(work, study).views.filter((v) => v.required && !films.some((f) => f.view === v.code && f.accepted)).map((v) => v.label);
  });
  return [...new Set(names)];
}
