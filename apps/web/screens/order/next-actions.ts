import { isActionName } from '#libs/contracts/actions/all';
import type { NextAction, OrderScreen, VisitView, WordedHold } from '#libs/contracts/screens/order';
import { sentence } from '../../design/format.js';
import { t } from '../../words/t.js';
import { maySaySize } from './record/picture-film.js';

/** Turns and ends of the road: possible, but not what the day is for. */
const detours = new Set([
  'addStudy', 'namePayer', 'confirmAddressees', 'cancelOrder', 'openVisit', 'offerReferral', 'recordTransfer', 'agreeTransfer', 'handOver', 'recordDeath', 'recordHarm',
  'nameCaseOwner', 'liftSilence', 'liftLegalHold', 'erasePerson', 'answerStatistics', 'cancelVisit', 'recordMissed', 'leaveStudyOut', 'withdrawSedation', 'turnAway',
  'withdrawStudy', 'endStudy', 'settleViews', 'changeCentre', 'recordCause', 'clearCause', 'setPhoneFirst', 'refuseResult', 'withdrawResult', 'recordOutcome', 'askAppeal', 'closeAppeal',
  'assignFilm', 'stateSize', 'disownFilm', 'logRoom', 'recordEvent', 'checkFitness', 'enterResult', 'rejectFilms', 'acknowledge', 'takeChase', 'judgeAnswers', 'settleIdentity',
]);

const known = (n: NextAction) => isActionName(n.action);

/** Stopping has its own bar, and points are set where a film is judged. */
const onPage = new Set(['stopImaging', 'markFilm']);

export type Sorted = { now: NextAction[]; also: NextAction[]; others: NextAction[] };

/** What this person can do next, apart from what stands elsewhere on the page already. */
export function sortActions(screen: OrderScreen, shownElsewhere: readonly NextAction[]): Sorted {
  const free = screen.next.filter((n) => known(n) && !onPage.has(n.action) && !shownElsewhere.includes(n) && !(n.action === 'stateSize' && !screen.exposures.some((e) => e.visit === n.on.id && maySaySize(e))));
  const yours = free.filter((n) => n.yours);
  return {
    now: yours.filter((n) => n.allowed && !aside(screen, n)).sort((a, b) => Number(anyTime(a)) - Number(anyTime(b))),
    also: yours.filter((n) => !n.allowed || aside(screen, n)),
    others: free.filter((n) => !n.yours && n.allowed && !aside(screen, n)),
  };
}

/** Noted whenever it happens; what leads on stands before it. */
const anyTime = (n: NextAction) => n.action === 'recordDrug';
const aside = (screen: OrderScreen, n: NextAction) => detours.has(n.action) || alreadyDone(screen, n);

/** Could be done again, to change it; nobody has to. */
function alreadyDone(screen: OrderScreen, { action, on }: NextAction): boolean {
  const visit = screen.visits.find((v) => v.id === on.id);
  const study = screen.studies.find((s) => s.id === on.id);
  if (action === 'book') return visit?.day != null;
  if (action === 'giveAnswers') return (visit?.answers.length ?? 0) > 0;
  if (action === 'acceptEstimate') return visit?.estimate?.accepted != null;
  if (action === 'consentSedation') return visit?.consent != null;
  if (action === 'examine') return visit?.examined != null;
  if (action === 'scanDog') return visit?.scans.some((s) => s.place === 'admission' && s.matches) ?? false;
  if (action === 'signPlan') return visit?.step === 'admitted' && visit.plans.length > 0;
  if (action === 'sendHome') return visit?.step === 'admitted';
  if (action === 'judgeView') return screen.exposures.every((e) => e.disowned || !e.serves.includes(on.id) || e.verdicts.some((v) => v.study === on.id));
  if (action === 'consentStudy') return study?.consent.study != null;
  return action === 'consentSendAll' && study?.consent.sendAll != null;
}

/** The ways out of a hold that this person can take. */
const waysOf = (screen: OrderScreen, hold: WordedHold): NextAction[] =>
  hold.ways.flatMap((way) => screen.next.filter((n) => n.action === way && known(n) && n.yours && n.allowed && n.action !== 'stopImaging' && (n.on.id === hold.on.id || n.on.scope !== hold.on.scope)));

const turnsOff = new Set(['turnAway', 'cancelVisit', 'cancelOrder', 'recordMissed', 'leaveStudyOut', 'withdrawSedation', 'withdrawStudy', 'endStudy', 'refuseResult', 'withdrawResult', 'disownFilm']);
/** Lifts a hold by going on; a turn off the road is never what is asked for first. */
export const goesOn = (n: NextAction) => !turnsOff.has(n.action);

/** A visit that has its time can only be given another one. */
export const labelOf = (screen: OrderScreen, n: NextAction) => (n.action === 'book' && screen.visits.find((v) => v.id === n.on.id)?.day ? t('Book another time') : n.label);

const WAYS_SHOWN = 2;

/** Each hold with its ways out, the likeliest first; a way that lifts several holds stands at the first of them. */
export function holdsWithWays(screen: OrderScreen): { hold: WordedHold; ways: NextAction[] }[] {
  const shown = new Set<NextAction>();
  return screen.holds.map((hold) => {
    const ways = waysOf(screen, hold)
      .filter((n) => !shown.has(n))
      .sort((a, b) => Number(goesOn(b)) - Number(goesOn(a)))
      .slice(0, WAYS_SHOWN);
    ways.forEach((n) => shown.add(n));
    return { hold, ways };
  });
}

/** Words of what is in the way of an action that cannot be done yet. */
export const inTheWay = (screen: OrderScreen, next: NextAction): string[] =>
  next.because.map((code) => {
    const hold = screen.holds.find((h) => h.code === code && h.on.id === next.on.id) ?? screen.holds.find((h) => h.code === code);
    return hold ? `${sentence(hold.title)} ${hold.rest}` : code;
  });

/** Where there are several visits or studies, or one word for several things, a button says which one it means. */
export function ofWhat(screen: OrderScreen, next: NextAction): string {
  if (next.on.scope === 'study' && screen.studies.length > 1) return studyName(screen, next.on.id);
  if (next.on.scope === 'visit' && screen.visits.length > 1) return screen.thread.visits.find((v) => v.id === next.on.id)?.sub ?? '';
  if (next.on.scope === 'order' || !screen.next.some((n) => n.label === next.label && n.on.scope !== next.on.scope)) return '';
  return next.on.scope === 'study' ? studyName(screen, next.on.id) : t('sedation');
}

/** What hands do beside a sleeping dog; it stands with the clock, and not again below. */
const besideTheDog = ['recordReading', 'recordDrug', 'scanDog', 'takeView', 'judgeView', 'signRecovery'];
export const actsBesideTheDog = (screen: OrderScreen): NextAction[] => besideTheDog.flatMap((a) => screen.next.filter((n) => n.action === a && n.yours && n.allowed));

export const isAsleep = (visit: VisitView) => visit.asleepSince !== null && visit.recovery === null && ['sedated', 'imaged'].includes(visit.step);
export const isBeingImaged = (screen: OrderScreen, visit: VisitView) => visit.step === 'sedated' || screen.next.some((n) => n.action === 'stopImaging' && n.on.id === visit.id);

/** The short name that the desk says, as it stands at the study's line. */
export const studyName = (screen: OrderScreen, study: string) => screen.thread.studies.find((r) => r.id === study)?.label ?? screen.studies.find((s) => s.id === study)?.name ?? t('another study');
