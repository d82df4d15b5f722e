import type { Bag } from './bag.js';
import type { CollectedStudy } from './collect.js';
import { lastWord } from './consent.js';
import { isAfter } from './effective.js';
import type { FactOf } from './facts.js';
import { type Film, stands } from './film.js';
import type { OrderPicture } from './order-picture.js';
import type { CentreRules, ProtocolRules, Rules } from './rules.js';
import { pictureLetters, type Letters } from './study-letters.js';
import { picturePackages, type Packages } from './study-packages.js';
import { pictureResults, type Results } from './study-results.js';
import { stepOfStudy } from './study-step.js';
import { isOpenStudy, type StudyStep } from './steps.js';
import type { VisitPicture } from './visit-picture.js';

export interface StudyPicture {
  id: string;
  facts: Bag;
  step: StudyStep;
  why: string | undefined;
  since: string;
  open: boolean;
  protocol: string;
  version: string;
  protocolRules: ProtocolRules | undefined;
  consentText: string | undefined;
  unseenChange: FactOf<'protocolChanged'> | undefined;
  centre: string;
  centreChanged: FactOf<'centreChanged'> | undefined;
  centreRules: CentreRules | undefined;
  consent: FactOf<'consentGiven'> | FactOf<'consentWithdrawn'> | undefined;
  /** All that serve it, whatever became of them. */
  served: Film[];
  /** Those that can be judged and read. */
  films: Film[];
  unjudged: Film[];
  missing: string[];
  /** Somebody said: go on with what there is. */
  settled: FactOf<'viewsSettled'> | undefined;
  packages: Packages;
  results: Results;
  letters: Letters;
  /** The visit in which its pictures may still be taken. */
  visit: VisitPicture | undefined;
}

export function pictureStudy(
  study: CollectedStudy, order: OrderPicture, visits: VisitPicture[], allFilms: Film[], rules: Rules,
): StudyPicture {
  const { facts, added, id } = study;
  const served = allFilms.filter((film) => film.serves.includes(id));
  const films = served.filter(stands);
  const centreChanged = facts.last('centreChanged');
  const centre = centreChanged?.centre ?? added.centre;
  const protocol = protocolOf(study, films[0]);
  const protocolRules = rules.protocols[`${added.protocol}@${protocol.version}`];
  const packages = picturePackages(facts, centre, served);
  const settled = facts.last('viewsSettled');
  const results = pictureResults(facts);
  const picture = {
    id, facts, served, films, centre, centreChanged, packages, protocolRules, results,
    protocol: added.protocol,
    version: protocol.version,
    consentText: protocol.seen?.consentText ?? protocolRules?.consentText,
    unseenChange: protocol.unseen,
    centreRules: rules.centres[centre],
    consent: lastWord('study', facts),
    unjudged: films.filter((film) => verdict(facts, film) === undefined),
    missing: missingViews(protocolRules?.views ?? [], facts, films, packages),
    settled: settled && isAboutThese(settled, films) && !isAfter(packages.lastRejection, settled) ? settled : undefined,
    letters: pictureLetters(facts, results, order),
    visit: visits.find((visit) => visit.ahead && visit.studies.includes(id)),
  };
  const { step, why, since } = stepOfStudy(picture, study, order);
  return { ...picture, step, why, since, open: isOpenStudy(step) };
}

/** Going on with what there is speaks of films that were there; it does not outlive them. */
const isAboutThese = (settled: FactOf<'viewsSettled'>, films: Film[]): boolean =>
  films.some((film) => isAfter(settled, film.taken));

/** A study keeps the version under which its first film was taken. */
function protocolOf({ facts, added }: CollectedStudy, firstFilm: Film | undefined) {
  const changes = facts.all('protocolChanged');
  const seen = facts.latest('protocolChangeSeen', (fact) =>
    changes.some((change) => change.version === fact.version) && (!firstFilm || !isAfter(fact, firstFilm.taken)));
  const newest = changes.at(-1);
  const version = seen?.version ?? added.version;
  return {
    version,
    seen: changes.findLast((change) => change.version === version),
    unseen: newest && !firstFilm && newest.version !== version ? newest : undefined,
  };
}

/** Taking a verdict back is said too; the film is then as if nobody had judged it. */
export function verdict(facts: Bag, film: { id: string }): 'accept' | 'retake' | undefined {
  const said = facts.latest('verdictGiven', (fact) => fact.exposure === film.id)?.verdict;
  return said === 'undecided' ? undefined : said;
}

function missingViews(required: string[], facts: Bag, films: Film[], packages: Packages): string[] {
  const good = films.filter((film) => verdict(facts, film) === 'accept' && !packages.spoils(film));
  const taken = new Set(good.map((film) => film.view));
  return required.filter((view) => !taken.has(view));
}
