import { type Action, actions } from '../actions.js';
import type { Evaluation, On } from '../evaluation.js';
import { evaluate } from '../evaluate.js';
import type { Fact, FactType, Payloads } from '../facts.js';
import { questions } from '../facts.js';
import type { Chooser } from './chooser.js';
import { pictureOf } from '../picture.js';
import type { Rules } from '../rules.js';
import { notesNotTaken } from '../study-notes.js';
import { fact, randomPayload } from './random-fact.js';

export interface Place { facts: Fact[]; now: string; evaluation: Evaluation }
export interface Stride { before: Place; action: Action; on: On; after: Place }

/** A walk along allowed actions, as people would take them, with news from outside in between. */
export function walk(c: Chooser, strides: number, rules: Rules, straight = c.below(3) === 0): Stride[] {
  const start = '2026-11-25T08:00:00.000Z';
  let place: Place = { facts: [], now: start, evaluation: evaluate([], start, rules) };
  const walked: Stride[] = [];
  for (let n = 0; n < strides; n += 1) {
    const news = !straight && c.below(20) === 0 ? fromOutside(c, place, rules) : null;
    if (news) {
      const facts = [...place.facts, news];
      place = { ...place, facts, evaluation: evaluate(facts, place.now, rules) };
    }
    const choice = choose(c, place.evaluation, straight);
    if (!choice) break;
    const now = later(place.now, c);
    const payload = payloadFor(choice.action, choice.on, place, c, rules, now.slice(0, 10));
    if (!payload) continue;
    const type = actions[choice.action].writes;
    const added = fact(type, payload as Payloads[typeof type], {
      id: `f${place.facts.length}`, at: now, by: c.of(['a', 'b', 'c']), role: c.of(actions[choice.action].roles),
    });
    const facts = [...place.facts, added];
    const after = { facts, now, evaluation: evaluate(facts, now, rules) };
    walked.push({ before: place, ...choice, after });
    place = after;
  }
  return walked;
}

function later(now: string, c: Chooser): string {
  const minutes = c.below(12) === 0 ? 60 * 24 * (1 + c.below(5)) : 1 + c.below(3);
  return new Date(Date.parse(now) + minutes * 60_000).toISOString();
}

const outside = [
  'sendOutcome', 'imageChecked', 'imagesLost', 'protocolChanged', 'centreClosed', 'practiceClosing', 'resultChecked', 'resultArrived',
  'ourDogSeenElsewhere', 'fitnessChecked', 'causeFound', 'dogRestated', 'noteOutcome',
] as const satisfies readonly FactType[];

/** What comes in from elsewhere, asked or not. */
function fromOutside(c: Chooser, { facts, now }: Place, rules: Rules): Fact | null {
  const { studies, visits, films } = pictureOf(facts, rules);
  if (studies.length === 0 || visits.length === 0) return null;
  const type = c.of(outside);
  const study = c.of(studies);
  const send = study.facts.last('packageSent')?.send;
  const result = study.results.waiting[0]?.result ?? `outside${facts.length}`;
  const film = films.at(-1)?.id;
  if ((type === 'imagesLost' || type === 'imageChecked') && film === undefined) return null;
  const about = {
    study: study.id, visit: visits.at(-1)?.id, send, centre: study.centre, exposure: film, exposures: [film],
    result: type === 'resultArrived' ? `outside${facts.length}` : result, reading: 'first',
  };
  const payload = Object.entries(randomPayload[type](c)).map(([key, value]) => [key, key in about ? about[key as keyof typeof about] : value]);
  return fact(type, Object.fromEntries(payload) as Payloads[typeof type], { id: `f${facts.length}`, at: now, by: 'queue', role: 'queue' });
}

/** Ends and detours: some walks take none, or few would come far. */
const detours = new Set<Action>([
  'cancelOrder', 'recordDeath', 'recordHarm', 'erasePerson', 'recordTransfer', 'offerReferral', 'cancelVisit', 'recordMissed', 'turnAway',
  'endStudy', 'withdrawStudy', 'withdrawSedation', 'leaveStudyOut', 'disownFilm', 'rejectFilms', 'changeCentre', 'refuseResult', 'withdrawResult',
  'stopImaging', 'settleViews', 'assignFilm', 'stateSize', 'askAppeal', 'confirmAddressees',
]);
const lateDetours = new Set<Action>(['rejectFilms', 'askAppeal', 'withdrawResult', 'refuseResult', 'stopImaging', 'settleViews']);
const road = new Set<Action>([
  'openVisit', 'admit', 'startSedation', 'takeView', 'judgeView', 'signRecovery', 'giveSheet', 'seal', 'send', 'acknowledge', 'enterResult',
  'acceptResult', 'releaseLetter', 'recordOutcome', 'resolveLetter', 'sealSupplement', 'releaseCorrection', 'tellCentre', 'tellOfNote',
]);

function weightOf(action: Action, evaluation: Evaluation, wanted: Set<Action>, straight: boolean): number {
  if (straight && detours.has(action)) return 0;
  if (lateDetours.has(action)) return 8;
  if (detours.has(action)) return 1;
  // A view is taken again, and imaging ended, only while that helps; a dog goes home after it has recovered.
  const missing = Object.values(evaluation.studies).some((study) => study.step === 'asked' || study.step === 'imaging');
  if (action === 'endImaging') return missing ? 0 : 60;
  if (action === 'takeView' || action === 'judgeView') return missing ? 60 : 0;
  if (action === 'sendHome') return Object.values(evaluation.visits).some((visit) => visit.step === 'recovered') ? 60 : 0;
  if (road.has(action)) return 60;
  return wanted.has(action) ? 20 : 1;
}

function choose(c: Chooser, evaluation: Evaluation, straight: boolean): { action: Action; on: On } | null {
  const { order, visits, studies } = evaluation;
  const all = [order, ...Object.values(visits), ...Object.values(studies)];
  const wanted = new Set(all.flatMap((thing) => thing.holds.flatMap((hold) => hold.ways)));
  const offered = [
    ...order.next.map((action) => ({ action, on: { scope: 'order', id: order.id } as On })),
    ...Object.values(visits).flatMap(({ id, next }) => next.map((action) => ({ action, on: { scope: 'visit', id } as On }))),
    ...Object.values(studies).flatMap(({ id, next }) => next.map((action) => ({ action, on: { scope: 'study', id } as On }))),
  ];
  const weighted = offered.flatMap((one) =>
    Array.from({ length: weightOf(one.action, evaluation, wanted, straight) }, () => one));
  return weighted.length === 0 ? null : c.of(weighted);
}

type Payload = Record<string, unknown>;

/** What a person doing this here would state; null where there is nothing to do it with. */
function payloadFor(action: Action, on: On, place: Place, c: Chooser, rules: Rules, today: string): Payload | null {
  const type: FactType = actions[action].writes;
  const base = { ...(randomPayload[type](c) as unknown as Payload) };
  if (on.scope === 'visit') base.visit = on.id;
  if (on.scope === 'study') base.study = on.id;
  const own = ownWords(action, on, place, c, rules, today);
  return own && { ...base, ...own };
}

function ownWords(action: Action, on: On, { facts, evaluation }: Place, c: Chooser, rules: Rules, today: string): Payload | null {
  const picture = pictureOf(facts, rules);
  const visit = picture.visits.find((one) => on.scope === 'visit' && one.id === on.id);
  const study = picture.studies.find((one) => on.scope === 'study' && one.id === on.id);
  const fresh = `${action}${facts.length}`;
  const consent = { answer: c.below(15) ? 'yes' : 'no', signerRole: 'owner', signer: 'owner' };
  const waiting = study?.results.waiting ?? [];
  const accepted = study?.results.accepted?.result.result;
  switch (action) {
    case 'openOrder': return {
      numbers: ['999000000000001'], addressees: [{ person: 'owner', channel: 'mail' }],
      birth: { date: c.below(6) ? '2024-01-10' : '2026-08-06', precision: 'day' },
    };
    case 'addStudy': return picture.studies.length > (c.below(9) ? 0 : 2) ? null : { study: `s${picture.studies.length + 1}`, protocol: c.of(['hipLaxity', 'hipExtended', 'elbow']), centre: c.of(['centre-weir', 'centre-ford']) };
    case 'openVisit': return { visit: fresh, studies: picture.studies.filter((one) => one.open && !one.visit).map((one) => one.id), restUntil: today };
    case 'offerReferral': return { referral: fresh };
    case 'acceptReferral': case 'closeReferral': return { referral: picture.order.referral?.referral, answer: action === 'acceptReferral' ? 'accepted' : 'takenBack' };
    case 'agreeTransfer': return { party: c.of(['seller', 'buyer']) };
    case 'handOver': return { from: picture.order.practice, to: 'p-reed', ownerAgreed: true };
    case 'answerStatistics': return { purpose: 'statistics', ...consent };
    case 'book': return { day: c.below(4) ? today : '2026-12-10', where: 'p-mill' };
    case 'giveAnswers': return { stage: visit?.step === 'admitted' ? 'admission' : 'booking', ...(c.below(4) ? { answers: Object.fromEntries(questions.map((question) => [question, 'no'])) } : {}) };
    case 'consentSedation': return { purpose: 'sedation', textVersion: 'sed-1', ...consent, emergency: { resuscitate: 'no', limitMinor: 0, currency: 'EUR', number: '1', collectors: ['owner'] } };
    case 'withdrawSedation': return { purpose: 'sedation' };
    case 'leaveStudyOut': return { study: c.of(visit?.studies ?? []) };
    case 'checkFitness': return { study: c.of(visit?.studies.length ? visit.studies : ['s1']) };
    case 'scanDog': return { place: visit?.step === 'sedated' ? 'table' : 'admission', numbers: c.below(6) ? ['999000000000001'] : [] };
    case 'signPlan': return { plan: fresh, kind: visit?.step === 'sedated' ? 'topUp' : 'first', vetPresent: c.below(6) > 0, weightKg: c.below(6) ? 20 : 21 };
    case 'startSedation': return { plan: visit?.facts.latest('planSigned', (plan) => plan.kind === 'first')?.plan };
    case 'topUp': return { plan: visit?.facts.latest('planSigned', (plan) => plan.kind === 'topUp')?.plan };
    case 'recordReading': return { n: facts.length };
    case 'recordDrug': return { entry: fresh };
    case 'assignFilm': return { exposure: c.of(visit?.films ?? []).id, serves: evaluation.visits[on.id]?.studies };
    case 'disownFilm': case 'logRoom': case 'markFilm': case 'stateSize': return { exposure: c.of(visit?.films ?? []).id };
    case 'consentStudy': return { purpose: 'study', centre: study?.centre, textVersion: study?.consentText, ...consent };
    case 'consentSendAll': return { purpose: 'sendAll', textVersion: 'all-1', ...consent };
    case 'withdrawStudy': return { purpose: 'study' };
    case 'seeProtocolChange': return { version: study?.unseenChange?.version };
    case 'takeView': return { visit: study?.visit?.id, exposure: fresh, image: fresh, imageDay: today, serves: c.below(6) ? [on.id] : [], view: c.of(study?.missing.length ? study.missing : ['vdExtended']) };
    case 'judgeView': return { exposure: c.of(study?.unjudged.length ? study.unjudged : study?.films ?? []).id };
    case 'seal': return { package: fresh, exposures: study?.served.filter((film) => !film.disowned && !film.lost).map((film) => film.id), supplements: undefined };
    case 'sealSupplement': return { package: fresh, exposures: study?.packages.unpacked.map((film) => film.id), supplements: study?.packages.live?.package };
    case 'send': return { send: fresh, package: study?.packages.unsent[0]?.package, centre: study?.centre };
    case 'resolveSend': return { send: study?.packages.uncertain.find((one) => !one.resolved)?.send.send };
    case 'acknowledge': return { send: study?.packages.uncertain[0]?.send.send ?? study?.packages.sent?.send };
    case 'rejectFilms': return { package: study?.packages.live?.package, send: study?.packages.sent?.send, views: study?.protocolRules?.views.slice(0, 1) };
    case 'enterResult': return { result: fresh, reading: study?.letters.appeal ? 'second' : 'first' };
    case 'keyResult': return { result: waiting.find((result) => result.channel === 'post')?.result, valuesHash: 'a' };
    case 'explainResult': case 'refuseResult': case 'acceptResult': return { result: c.of(waiting).result };
    case 'settleConflict': return { keep: c.of(study?.results.conflict ?? []).result };
    case 'withdrawResult': case 'askAppeal': return { result: accepted };
    case 'releaseLetter': case 'releaseAgain': return { letter: fresh, kind: 'result', result: accepted, to: picture.order.addressees.map((one) => one.person) };
    case 'releaseFilmsRejected': return { letter: fresh, kind: 'filmsRejected', result: undefined, to: ['owner'] };
    case 'releaseCorrection': return { letter: fresh, kind: 'correction', result: undefined, to: ['owner'] };
    case 'recordOutcome': case 'resolveLetter': return {
      letter: study?.facts.latest('letterReleased', (letter) => letter.kind === 'result' && letter.result === accepted)?.letter, to: study?.letters.undelivered[0],
    };
    case 'changeCentre': return { centre: c.of(['centre-weir', 'centre-ford']) };
    case 'takeChase': return { lookAgain: '2026-12-20' };
    case 'tellOfNote': return { note: study && notesNotTaken(study.facts)[0] };
    case 'liftLegalHold': return { second: 'second' };
    default: return {};
  }
}
