import type { CollectedStudy } from './collect.js';
import type { Fact } from './facts.js';
import type { OrderPicture } from './order-picture.js';
import type { StudyStep } from './steps.js';
import type { StudyPicture } from './study-picture.js';

type Evidence = Omit<StudyPicture, 'step' | 'why' | 'since' | 'open'>;
interface Reached { step: StudyStep; since: string; why?: string }

/** Read from the most advanced downwards: the first that the facts carry. */
export function stepOfStudy(study: Evidence, { added }: CollectedStudy, order: OrderPicture): Reached {
  const { packages, results, letters, films, missing, settled } = study;
  const ended = endOf(study, order);
  if (ended) return ended;
  if (results.waiting.length > 0) return at('answered', results.waiting[0]);
  if (results.accepted && !letters.current) return at('accepted', results.accepted.by);
  if (letters.appeal) return at('appealed', letters.appeal);
  if (letters.current) {
    return letters.undelivered.length > 0
      ? at('released', letters.current)
      : { step: 'reported', since: letters.deliveredAt ?? letters.current.at };
  }
  if (packages.acknowledged) return at('withCentre', packages.acknowledged);
  if (packages.sent) return at('sent', packages.sent);
  if (packages.live) return at('sealed', packages.live);
  if (packages.lastRejection && missing.length > 0 && !settled && !study.visit) return at('rejected', packages.lastRejection);
  const firstFilm = films[0]?.taken;
  if (!firstFilm) return at('asked', packages.lastRejection ?? added);
  if (missing.length > 0 && !settled) return at('imaging', packages.lastRejection ?? firstFilm);
  return at('ready', settled ?? study.facts.last('verdictGiven') ?? firstFilm);
}

const at = (step: StudyStep, fact: Fact | undefined): Reached => ({ step, since: fact?.at ?? '' });

/** No study ends once its owner has a letter with its result. */
function endOf(study: Evidence, order: OrderPicture): Reached | null {
  const { facts, packages, consent, films } = study;
  if (study.letters.resultOut) return null;
  const end = (fact: Fact, why: string): Reached => ({ step: 'ended', since: fact.at, why });
  const ended = facts.first('studyEnded');
  if (ended) return end(ended, ended.why);
  if (consent?.type === 'consentWithdrawn') return end(consent, packages.everSent ? 'withdrawnAfterSending' : 'withdrawn');
  if (order.died) {
    const decided = facts.last('afterDeathDecided');
    if (films.length === 0 && !packages.everSent) return end(order.died, 'dogDied');
    if (decided && !decided.goOn) return end(decided, 'dogDied');
  }
  if (order.cancelled && films.length === 0 && !packages.everSent) return end(order.cancelled, 'cancelled');
  return null;
}

