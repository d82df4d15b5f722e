import { randomUUID } from 'node:crypto';
import { addDays } from '#libs/pathway/days';
import { localDay } from '#libs/pathway/zones';
import { visitEstimate } from '#libs/steps/booking/visit-estimate';
import { lockOrder } from '#libs/steps/record/order-record';
import { instantOf } from '#libs/steps/record/local-time';
import { workOn } from '#libs/steps/record/work';
import { dogNamed } from '#seed/demo-scheme';
import { bookDog } from '#seed/roads/book-dog';
import { acknowledge, dispatch, enterResult, readerOf } from '#seed/roads/centre';
import { consentTo } from '#seed/roads/consent-to';
import { endImaging, imageViews, judge, takeView } from '#seed/roads/image-views';
import { acceptResult } from '#seed/roads/letter';
import { PacedClock } from '#seed/roads/paced-clock';
import { deliverPost } from '#seed/roads/post';
import { factsOf, laterDays, perform, report, studyOf, type Road } from '#seed/roads/road';
import { uploadFilm } from '#seed/roads/upload-film';
import type { PracticeKey } from '#seed/practices';
import { admitDog, examine, goHome, scanDog, signPlan, signRecovery, startSedation, watch, weightOf } from '#seed/roads/visit';
import type { Original } from './copies.js';
import type { Ground } from './ground.js';

/** An order that stands somewhere, to be copied. */
export interface State { name: string; road: Road; original: Original; at: Date; practice: PracticeKey }

type Go = (road: Road) => Promise<void>;
/** `practice`: who is asking, where it is not the one whose order it is. */
interface Way { after: string; go: Go; practice?: PracticeKey }
/** The study that the matrix asks about: the elbows. */
export const first = (road: Road): string => studyOf(road, 'elbow');
const each = (work: (road: Road, study: string) => Promise<void>): Go => async (road) => {
  for (const study of Object.keys(road.evaluation.studies)) await work(road, study);
};
export const today = (road: Road): string => localDay(road.clock.now().toISOString(), road.house.zone);
const laterInTheDay = ({ clock }: Road) => clock.advance({ minutes: 10 });
const lastLetter = (road: Road) => factsOf(road, 'letterReleased').find((f) => f.study === first(road))!.letter;
const outcome = (how: 'bounced' | 'unknown'): Go => (road) => report(road, 'deliverPost', [{ type: 'letterOutcome', study: first(road), letter: lastLetter(road), to: road.dog.person.id, outcome: how }]);

const accepted = (road: Road) => factsOf(road, 'resultAccepted').find((f) => f.study === first(road))!.result;
const appeal: Go = (road) => perform(road, road.house.desk, 'askAppeal', first(road), { result: accepted(road), asker: road.dog.person.id });
const elbowViews = (road: Road): string[] => road.evaluation.studies[first(road)]!.missing;

/** Every state that the matrix asks in, and what leads there from another; the elbows and then the hips of one dog. */
export const ways: Record<string, Way> = {
  consented: { after: 'booked', go: async (road) => {
    await consentTo(road);
    const { day, start } = factsOf(road, 'visitBooked')[0]!;
    road.clock.set(instantOf(day, start, road.house.zone));
  } },
  admitted: { after: 'consented', go: admitDog },
  planned: { after: 'admitted', go: async (road) => { await examine(road); await signPlan(road); } },
  sedated: { after: 'planned', go: async (road) => { await startSedation(road); await watch(road, 1); } },
  toppingUp: { after: 'sedated', go: (road) => perform(road, road.lane.vet, 'signPlan', road.visit, {
    kind: 'topUp', vetPresent: true, weightKg: weightOf(road), drugs: [{ drug: 'Example sedative (invented)', route: 'as the vet decides', dose: 1, doseUnit: 'mg/kg', concentration: 100, concentrationUnit: 'mg/mL', resolutionMl: 0.01 }],
  }) },
  onTable: { after: 'sedated', go: (road) => scanDog(road, 'table') },
  imaging: { after: 'onTable', go: (road) => takeView(road, elbowViews(road)[0]!) },
  takenAgain: { after: 'imaging', go: (road) => judge(road, 'retake', ['position']) },
  lastFilm: { after: 'imaging', go: async (road) => { await judge(road, 'accept'); await takeView(road, elbowViews(road)[0]!); } },
  readyAsleep: { after: 'imaging', go: async (road) => { await judge(road, 'accept'); await imageViews(road); } },
  imaged: { after: 'readyAsleep', go: endImaging },
  recovered: { after: 'imaged', go: signRecovery },
  home: { after: 'recovered', go: goHome },
  studiesEnded: { after: 'imaged', go: each((road, study) => perform(road, road.lane.vet, 'endStudy', study, { reason: 'notPossible' })) },
  stopped: { after: 'imaging', go: (road) => perform(road, road.lane.nurse, 'stopImaging', road.visit, { woke: true }) },
  sealed: { after: 'home', go: each((road, study) => perform(road, road.house.desk, 'seal', study, {})) },
  sent: { after: 'home', go: each((road, study) => dispatch(road, study)) },
  withCentre: { after: 'sent', go: async (road) => { laterDays(road, 1); await each(acknowledge)(road); } },
  overdue: { after: 'withCentre', go: (road) => Promise.resolve(laterDays(road, 30)) },
  answered: { after: 'withCentre', go: async (road) => { laterDays(road, 6); await each((r, study) => enterResult(r, study))(road); } },
  accepted: { after: 'answered', go: each(acceptResult) },
  released: { after: 'accepted', go: each((road, study) => perform(road, road.lane.vet, 'releaseLetter', study, {})) },
  reported: { after: 'released', go: (road) => deliverPost(road) },

  cancelledVisit: { after: 'booked', go: (road) => perform(road, road.house.desk, 'cancelVisit', road.visit, { side: 'owner', why: 'Away that day.' }) },
  cancelledOrder: { after: 'booked', go: (road) => perform(road, road.house.desk, 'cancelOrder', road.order, { why: 'Not wanted any more.' }) },
  missed: { after: 'consented', go: async (road) => { road.clock.advance({ days: 1 }); await perform(road, road.house.desk, 'recordMissed', road.visit, {}); } },
  turnedAway: { after: 'admitted', go: (road) => perform(road, road.lane.vet, 'turnAway', road.visit, { reason: 'unwell' }) },
  changedProtocol: { after: 'booked', go: (road) => report(road, 'changeProtocol', [{ type: 'protocolChanged', study: first(road), version: 'another' }]) },
  otherDogScanned: { after: 'admitted', go: (road) => scanDog(road, 'admission', ['999000000000042']) },
  asked: { after: 'booked', go: (road) => perform(road, road.house.desk, 'offerReferral', road.order, { to: road.driver.scheme.houses.karsby.id, expires: addDays(today(road), 5), ownerAgreed: true }) },
  askedThere: { after: 'asked', go: () => Promise.resolve(), practice: 'karsby' },
  takenThere: { after: 'asked', go: (road) => perform(road, { ...road.driver.scheme.houses.karsby.desk }, 'acceptReferral', road.order, {}), practice: 'karsby' },
  sold: { after: 'home', go: (road) => perform(road, road.house.desk, 'recordTransfer', road.order, { day: today(road), buyerName: 'Tamsin Orr', buyerEmail: 'tamsin@orr.example' }) },
  closing: { after: 'home', go: (road) => report(road, 'closePractice', [{ type: 'practiceClosing', closing: road.house.id, lastDay: addDays(today(road), 20) }]) },
  diedAsleep: { after: 'imaging', go: (road) => perform(road, road.lane.vet, 'recordDeath', road.order, { day: today(road), inCare: true, cause: 'Not known yet.' }) },
  diedAtHome: { after: 'withCentre', go: (road) => perform(road, road.house.desk, 'recordDeath', road.order, { day: today(road), inCare: false, cause: 'Run over, the owner says.' }) },
  harmed: { after: 'home', go: (road) => perform(road, road.lane.vet, 'recordHarm', road.order, { what: 'Does not wake properly.' }) },
  caseNamed: { after: 'harmed', go: (road) => perform(road, road.house.manager, 'nameCaseOwner', road.order, { person: road.lane.vet.id }) },
  ended: { after: 'home', go: each((road, study) => perform(road, road.house.desk, 'endStudy', study, { reason: 'ownerDecided' })) },
  takenBack: { after: 'sent', go: each((road, study) => perform(road, road.house.desk, 'withdrawStudy', study, { purpose: 'study' })) },
  outcomeUnknown: { after: 'sealed', go: async (road) => {
    await perform(road, road.house.desk, 'send', first(road), {});
    await report(road, 'deliverPost', [{ type: 'sendOutcome', study: first(road), send: factsOf(road, 'packageSent').at(-1)!.send, outcome: 'unknown' }]);
  } },
  closedCentre: { after: 'sealed', go: (road) => report(road, 'closeCentre', [{ type: 'centreClosed', centre: road.evaluation.studies[first(road)]!.centre, from: today(road) }]) },
  noteRefused: { after: 'withCentre', go: (road) => report(road, 'noteOutcome', [{ type: 'noteOutcome', study: first(road), note: randomUUID(), outcome: 'refused' }]) },
  unpaid: { after: 'sent', go: (road) => perform(road, road.house.manager, 'recordCause', first(road), { cause: 'unpaid' }) },
  // As a device tells it that was away while the package went.
  lateFilm: { after: 'sent', go: (road) => report(road, 'assignFilm', [{ type: 'exposureAssigned', exposure: factsOf(road, 'exposureTaken').at(-1)!.exposure, serves: Object.keys(road.evaluation.studies) }]) },
  rejected: { after: 'withCentre', go: each((road, study) => perform(road, readerOf(road, study), 'rejectFilms', study, { views: [factsOf(road, 'exposureTaken').find((f) => f.serves.includes(study))!.view], reasons: ['Turned to one side.'] })) },
  wanted: { after: 'rejected', go: async (road) => {
    await perform(road, road.house.desk, 'openVisit', road.order, { studies: Object.keys(road.evaluation.studies), reason: 'rejected', payer: road.dog.person.id });
    road.visit = factsOf(road, 'visitOpened').at(-1)!.visit;
  } },
  sentBeforeVisit: { after: 'wanted', go: async (road) => {
    await perform(road, road.lane.vet, 'settleViews', first(road), { why: 'The owner wants them read as they are.' });
    await dispatch(road, first(road));
  } },
  conflict: { after: 'answered', go: (road) => enterResult(road, first(road), { ref: 'K-14', joints: [{ joint: 'left', value: '2', findings: { primaryLesion: 'absent' } }, { joint: 'right', value: '1', findings: { primaryLesion: 'absent' } }], reader: 1 }) },
  onPaper: { after: 'withCentre', go: (road) => perform(road, road.house.desk, 'enterResult', first(road), { ref: 'K-41', channel: 'post', joints: [{ joint: 'left', value: '0', findings: { primaryLesion: 'absent' } }, { joint: 'right', value: '0', findings: { primaryLesion: 'absent' } }], scan: factsOf(road, 'exposureTaken')[0]!.image }) },
  otherDogsNumber: { after: 'withCentre', go: async (road) => {
    await perform(road, readerOf(road, first(road)), 'enterResult', first(road), { ref: 'K-43', channel: 'page', joints: [{ joint: 'left', value: '0', findings: { primaryLesion: 'absent' } }, { joint: 'right', value: '0', findings: { primaryLesion: 'absent' } }], readOn: addDays(today(road), -30) });
  } },
  toPhone: { after: 'accepted', go: (road) => perform(road, road.lane.vet, 'setPhoneFirst', first(road), { until: addDays(today(road), 3) }) },
  bounced: { after: 'released', go: outcome('bounced') },
  letterUnknown: { after: 'released', go: outcome('unknown') },
  appealed: { after: 'reported', go: appeal },
  appealedAtOnce: { after: 'released', go: appeal },
  withdrawn: { after: 'reported', go: (road) => perform(road, road.lane.vet, 'withdrawResult', first(road), { result: accepted(road), reason: 'otherDog' }) },
};

/** A film that was uploaded and is no view yet. */
export const spares = new Map<Road, string>();
/** What its visit is expected to cost. */
export const estimates = new Map<Road, number>();

/** Drives one dog once, and copies it wherever ways part. */
export async function reachStates({ driver, copies, clock }: Ground): Promise<State[]> {
  const dog = dogNamed(driver.scheme, 'Alder');
  const start = clock.now();
  const booked = await bookDog(driver, { dog, studies: [['elbow', 'threnfold'], ['hipExtended', 'threnfold']], at: start, slot: { day: addDays(localDay(start.toISOString(), dog.house.zone), 1), start: '10:00', minutes: 45, lane: dog.house.lanes[0]! } });
  await deliverPost(booked);
  const spare = await uploadFilm(booked, 'vdExtended', 'even');
  const states = new Map<string, State>();
  const keep = async (name: string, road: Road, practice: PracticeKey = 'weirside') => {
    laterInTheDay(road);
    // As it is read at the moment at which it is asked.
    Object.assign(road, await readAt(road, road.order, road.clock.now()));
    estimates.set(road, await estimateOf(road));
    spares.set(road, spare);
    states.set(name, { name, road, original: await copies.take(road.order), at: road.clock.now(), practice });
  };
  await keep('booked', booked);
  for (const [name, { after, go, practice }] of Object.entries(ways)) {
    const from = states.get(after)!;
    const [copy] = await copies.make(from.original, 1);
    const clockHere = new PacedClock(from.at);
    const { order, dog: hers, visit } = copy!.of({ order: from.road.order, dog: { id: from.road.dog.id, person: from.road.dog.person, transponder: from.road.dog.transponder }, visit: from.road.visit });
    const road: Road = { ...from.road, clock: clockHere, order, visit, dog: { ...from.road.dog, ...hers }, dated: [], ...(await readAt(from.road, order, clockHere.now())) };
    await go(road).catch((error: unknown) => { throw new Error(`No way to ${name}.`, { cause: error }); });
    await keep(name, road, practice);
  }
  return [...states.values()];
}

/** The order as the pathway reads it at that moment. */
export const readAt = ({ driver, house }: Road, order: string, now: Date) => driver.db.practice(house.id, async (tx) => {
  const work = workOn(tx, now, house.desk, (await lockOrder(tx, order))!, driver.publicUrl);
  return { evaluation: work.evaluation, facts: work.order.facts, version: work.order.version };
});

const estimateOf = ({ driver, house, order, visit, clock }: Road): Promise<number> => driver.db.practice(house.id, async (tx) => {
  const work = workOn(tx, clock.now(), house.desk, (await lockOrder(tx, order))!, driver.publicUrl);
  return (await visitEstimate(work, visit)).total.amountMinor;
});
