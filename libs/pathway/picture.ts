import { collect } from './collect.js';
import { effective } from './effective.js';
import type { Ignored } from './evaluation.js';
import type { Fact } from './facts.js';
import { type Film, filmsOf } from './film.js';
import { pictureOrder, type OrderPicture } from './order-picture.js';
import type { Rules } from './rules.js';
import { pictureStudy, type StudyPicture } from './study-picture.js';
import { pictureVisit, type VisitPicture } from './visit-picture.js';

/** What the facts say, before the time of day has a word in it. */
export interface Picture {
  opened: boolean;
  facts: Fact[];
  order: OrderPicture;
  films: Film[];
  visits: VisitPicture[];
  studies: StudyPicture[];
  ignored: Ignored[];
}

/** Judging an order and drawing its thread ask for the same picture; facts are only ever added to the list. */
const drawn = new WeakMap<readonly Fact[], { length: number; rules: Rules; picture: Picture }>();

export function pictureOf(given: readonly Fact[], rules: Rules): Picture {
  const known = drawn.get(given);
  if (known?.length === given.length && known.rules === rules) return known.picture;
  const picture = draw(given, rules);
  drawn.set(given, { length: given.length, rules, picture });
  return picture;
}

function draw(given: readonly Fact[], rules: Rules): Picture {
  const { facts, ignored } = effective(given);
  const collected = collect(facts);
  const order = pictureOrder(collected, rules);
  const films = filmsOf(collected);
  const visits = [...collected.visits.values()].map((visit) => pictureVisit(visit, order, films, rules));
  const studies = [...collected.studies.values()].map((study) => pictureStudy(study, order, visits, films, rules));
  return {
    facts, order, films, visits, studies,
    opened: collected.opened !== undefined,
    ignored: [...ignored, ...collected.ignored, ...order.ignored].sort((a, b) => (a.fact < b.fact ? -1 : 1)),
  };
}
