import { isAfter } from './effective.js';
import type { FactOf } from './facts.js';
import type { holdsOn } from './hold.js';
import type { StudyPicture } from './study-picture.js';
import { agreedKeying } from './study-results.js';

type Arrived = FactOf<'resultArrived'>;

/** Holds of a study in which a result waits for somebody. */
export function resultHolds(study: StudyPicture, raise: ReturnType<typeof holdsOn>['raise']): void {
  const { waiting, conflict } = study.results;
  const ids = (results: Arrived[]): { results: string[] } => ({ results: results.map((one) => one.result) });
  const raiseFor = (code: Parameters<typeof raise>[0], results: Arrived[]): void => {
    if (results.length > 0) raise(code, { detail: ids(results) });
  };
  raiseFor('RESULT_NOT_EXPECTED', waiting.filter((one) => !isExpected(study, one) && !isExplained(study, one)));
  raiseFor('RESULTS_DISAGREE', conflict);
  raiseFor('PHONE_ONLY', waiting.filter((one) => one.channel === 'phone'));
  const post = waiting.filter((one) => one.channel === 'post');
  const unlike = post.filter((one) => keyers(study, one) >= 2 && agreedKeying(study.facts, one) === undefined);
  raiseFor('POST_NOT_KEYED_TWICE', post.filter((one) => one.scan === undefined || keyers(study, one) < 2));
  raiseFor('KEYED_DIFFERENTLY', unlike);
  raiseFor('RESULT_IDENTITY_MISMATCH', waiting.filter((one) => problems(study, one).includes('IDENTITY')));
  const doubtful = waiting.filter((one) => problems(study, one).some((problem) => problem !== 'IDENTITY') && !isExplained(study, one));
  if (doubtful.length > 0) {
    const found = doubtful.flatMap((one) => problems(study, one).filter((problem) => problem !== 'IDENTITY'));
    raise('RESULT_TO_EXPLAIN', { detail: { ...ids(doubtful), problems: [...new Set(found)] } });
  }
  raise('RESULT_TO_CHECK', { detail: ids(waiting) });
}

function isExpected(study: StudyPicture, result: Arrived): boolean {
  if (result.reading === 'second') return study.letters.appealed;
  const { live } = study.packages;
  return live !== undefined && study.facts.all('packageSent').some((send) => send.package === live.package);
}

const keyers = (study: StudyPicture, result: Arrived): number =>
  new Set(study.facts.all('resultKeyed').filter((fact) => fact.result === result.result).map((fact) => fact.by)).size;

const lastCheck = (study: StudyPicture, result: Arrived) =>
  study.facts.latest('resultChecked', (fact) => fact.result === result.result);

const problems = (study: StudyPicture, result: Arrived) => lastCheck(study, result)?.problems ?? [];

/** An explanation speaks of what had been found by then. */
const isExplained = (study: StudyPicture, result: Arrived): boolean =>
  study.facts.all('resultExplained').some((fact) => fact.result === result.result && isAfter(fact, lastCheck(study, result)));
