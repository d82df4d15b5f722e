import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import type { actionInputs, ActionName } from '#libs/contracts/actions/all';
import { questions, type Joint } from '#libs/contracts/common';
import { addDays } from '#libs/pathway/days';
import type { FactType } from '#libs/pathway/facts';
import { factsOf, type Road } from '#seed/roads/road';
import type { PracticeKey } from '#seed/practices';
import { weightOf } from '#seed/roads/visit';
import { estimates, first, spares, today } from './states.js';

/** The road, and whose people ask. */
type Bodies = { [A in ActionName]: (road: Road, practice: PracticeKey) => z.input<(typeof actionInputs)[A]> };

const DRUG = 'Example sedative (invented)';
const no = Object.fromEntries(questions.map((q) => [q, 'no' as const]));
const elbows: Joint[] = [{ joint: 'left', value: '0', findings: { primaryLesion: 'absent' } }, { joint: 'right', value: '0', findings: { primaryLesion: 'absent' } }];
/** What an action names where there is none: an id of nothing. */
const NONE = randomUUID();
const studies = (road: Road) => Object.keys(road.evaluation.studies);
const study = first;
const last = <T extends FactType>(road: Road, type: T) => factsOf(road, type).at(-1);
/** One that waits for a verdict, if any does. */
const film = (road: Road) => {
  const films = factsOf(road, 'exposureTaken').filter((f) => f.serves.includes(study(road)));
  const judged = new Set(factsOf(road, 'verdictGiven').map((f) => f.exposure));
  return (films.find((f) => !judged.has(f.exposure)) ?? films[0])?.exposure ?? NONE;
};
const isReady = (road: Road) => road.evaluation.studies[study(road)]!.step === 'ready';
const viewOf = (road: Road) => road.evaluation.studies[study(road)]!.missing[0] ?? 'mlFlexedLeft';
const person = (road: Road) => road.dog.person.id;
const signed = (road: Road) => ({ answer: 'yes' as const, signer: person(road), signerRole: 'owner' as const, typedName: road.dog.person.name });
const waiting = (road: Road) => road.evaluation.studies[study(road)]!.holds.find((h) => h.code === 'RESULT_TO_CHECK')?.detail?.results?.at(-1) ?? NONE;
const accepted = (road: Road) => factsOf(road, 'resultAccepted').findLast((f) => f.study === study(road))?.result ?? NONE;
const letter = (road: Road) => factsOf(road, 'letterReleased').findLast((f) => f.study === study(road))?.letter ?? NONE;
const plan = (road: Road, kind: 'first' | 'topUp') => factsOf(road, 'planSigned').findLast((f) => f.kind === kind)?.plan ?? NONE;
let slots = 0;

/** A body for every action that fits the order as it stands; the compiler asks for that of a new one. */
export const bodies: Bodies = {
  addStudy: ({ driver }) => ({ protocol: 'hipLaxity', centre: driver.scheme.centres.threnfold.id }),
  namePayer: (road) => ({ payer: person(road) }),
  confirmAddressees: (road) => ({ people: [person(road)] }),
  nameSigners: () => ({ rule: 'any' }),
  chooseLetterTime: (road) => ({ person: person(road), anyTime: true }),
  cancelOrder: () => ({ why: 'Not wanted any more.' }),
  openVisit: (road) => ({ studies: studies(road), reason: 'rejected', payer: person(road) }),
  offerReferral: (road) => ({ to: road.driver.scheme.houses.karsby.id, expires: addDays(today(road), 5), ownerAgreed: true }),
  acceptReferral: () => ({}),
  closeReferral: (_road, practice) => ({ answer: practice === 'weirside' ? 'takenBack' : 'declined', why: 'Taken here after all.' }),
  recordTransfer: (road) => ({ day: today(road), buyerName: 'Tamsin Orr', buyerEmail: 'tamsin@orr.example' }),
  agreeTransfer: () => ({ party: 'buyer' }),
  handOver: (road) => ({ to: road.driver.scheme.houses.karsby.id, ownerAgreed: true }),
  recordDeath: (road) => ({ day: today(road), inCare: true, cause: 'Not known yet.' }),
  recordHarm: () => ({ what: 'Does not wake properly.' }),
  nameCaseOwner: (road) => ({ person: road.lane.vet.id }),
  liftSilence: () => ({ why: 'Spoken with the family.' }),
  liftLegalHold: (road) => ({ why: 'Settled.', second: road.lane.vet.id }),
  erasePerson: (road) => ({ person: person(road) }),
  answerStatistics: (road) => ({ answer: 'yes', signer: person(road) }),

  book: (road, practice) => {
    // Every try another time of day and another day, so that two copies of one order are not in each other's way.
    const { room, operator, nurse, vet } = road.driver.scheme.houses[practice].lanes[0]!;
    const day = addDays(last(road, 'visitBooked')?.day ?? today(road), 14 + slots++);
    return { day, start: '11:00', minutes: 45, room, operator: operator.id, nurse: nurse.id, vet: vet.id };
  },
  cancelVisit: () => ({ side: 'practice', why: 'The room is flooded.' }),
  recordMissed: () => ({}),
  admit: (road) => ({ weightKg: weightOf(road), bodyCondition: 5, fastedHours: 10 }),
  acceptEstimate: (road) => ({ payer: person(road), how: 'phone', totalMinor: estimates.get(road) ?? 0 }),
  giveAnswers: () => ({ stage: 'reminder', answers: no }),
  judgeAnswers: () => ({ go: true, why: 'Seen on the phone.' }),
  checkFitness: () => ({}),
  leaveStudyOut: (road) => ({ study: studies(road).find((id) => id !== first(road))!, why: 'Another day.' }),
  consentSedation: (road) => ({ ...signed(road), emergency: { resuscitate: 'yes', limitMinor: 60_000, number: road.dog.person.phone, collectors: [road.dog.person.name] } }),
  withdrawSedation: () => ({ why: 'The owner has second thoughts.' }),
  turnAway: () => ({ reason: 'unwell' }),
  scanDog: (road) => ({ place: 'table', numbers: [road.dog.transponder], passes: 1, readers: 1 }),
  settleIdentity: () => ({ why: 'The tattoo is this dog’s.' }),
  examine: () => ({ statusClass: 1, findings: 'Heart and lungs without findings.' }),
  signPlan: (road) => ({ kind: 'topUp', vetPresent: true, weightKg: weightOf(road), drugs: [{ drug: DRUG, route: 'as the vet decides', dose: 1, doseUnit: 'mg/kg', concentration: 100, concentrationUnit: 'mg/mL', resolutionMl: 0.01 }] }),
  startSedation: (road) => ({ plan: plan(road, 'first') }),
  topUp: (road) => ({ plan: plan(road, 'topUp') }),
  endImaging: () => ({}),
  stopImaging: () => ({ woke: true }),
  recordReading: () => ({ device: 'ward', heartRate: 74, breaths: 14 }),
  recordDrug: () => ({ event: 'discarded', drug: DRUG, batch: 'EX-0001', amountMl: 0.1 }),
  recordEvent: () => ({ what: 'Licks its lips.' }),
  signRecovery: () => ({ signs: ['awake', 'stands', 'swallows'] }),
  giveSheet: (road) => ({ to: road.dog.person.name }),
  sendHome: (road) => ({ with: road.dog.person.name }),
  assignFilm: (road) => ({ exposure: film(road), serves: [study(road)] }),
  disownFilm: (road) => ({ exposure: film(road), reason: 'testFilm' }),
  stateSize: (road) => ({ exposure: film(road) }),
  markFilm: (road) => ({ exposure: factsOf(road, 'exposureTaken').find((f) => f.view === 'vdExtended')?.exposure ?? NONE, marks: [{ kind: 'midline', points: [{ x: 500, y: 100 }, { x: 500, y: 600 }] }] }),
  logRoom: (road) => ({ exposure: film(road), people: [road.lane.operator.id] }),

  consentStudy: signed,
  consentSendAll: signed,
  withdrawStudy: () => ({ purpose: 'study' }),
  seeProtocolChange: () => ({}),
  endStudy: () => ({ reason: 'ownerDecided' }),
  decideAfterDeath: () => ({ goOn: false }),
  takeView: (road) => ({ view: viewOf(road), serves: [study(road)], image: spares.get(road)!, people: [road.lane.operator.id], marker: 'L' }),
  judgeView: (road) => (isReady(road) ? { exposure: film(road), verdict: 'retake', reasons: ['position'] } : { exposure: film(road), verdict: 'accept' }),
  settleViews: () => ({ why: 'No second sleep is wanted.' }),
  seal: () => ({}),
  send: () => ({}),
  sealSupplement: () => ({}),
  resolveSend: (road) => ({ send: last(road, 'packageSent')?.send ?? NONE, arrived: true }),
  acknowledge: () => ({}),
  rejectFilms: (road) => ({ views: [factsOf(road, 'exposureTaken')[0]?.view ?? 'mlFlexedLeft'], reasons: ['Turned to one side.'] }),
  enterResult: () => ({ ref: 'K-77', channel: 'file', joints: elbows }),
  recordCause: () => ({ cause: 'unpaid' }),
  clearCause: () => ({ cause: 'unpaid' }),
  recordAutoReply: () => ({ note: 'Away until Monday.' }),
  takeChase: (road) => ({ person: road.lane.vet.id, lookAgain: addDays(today(road), 7) }),
  changeCentre: (road) => ({ centre: Object.values(road.driver.scheme.centres).find((c) => c.id !== road.evaluation.studies[study(road)]!.centre)!.id }),
  keyResult: (road) => ({ result: factsOf(road, 'resultArrived').findLast((f) => f.channel === 'post')?.result ?? NONE, joints: elbows }),
  explainResult: (road) => ({ result: waiting(road), why: 'The sheet was typed a day late.' }),
  refuseResult: (road) => ({ result: waiting(road), reason: 'sentTwice' }),
  askWhichStands: () => ({}),
  settleConflict: (road) => ({ keep: factsOf(road, 'resultArrived').findLast((f) => f.study === study(road))?.result ?? NONE, saidBy: 'Noemi Haskel', why: 'The other is a slip.' }),
  acceptResult: (road) => ({ result: waiting(road) }),
  setPhoneFirst: (road) => ({ until: addDays(today(road), 3) }),
  recordCall: () => ({ reached: true }),
  releaseLetter: () => ({}),
  releaseAgain: () => ({}),
  releaseCorrection: () => ({}),
  releaseFilmsRejected: () => ({ cost: 'Nothing: we take them again.' }),
  withdrawResult: (road) => ({ result: accepted(road), reason: 'otherDog' }),
  recordOutcome: (road) => ({ letter: letter(road), to: person(road), outcome: 'delivered' }),
  resolveLetter: (road) => ({ letter: letter(road), to: person(road), arrived: true }),
  askAppeal: (road) => ({ result: accepted(road), asker: person(road) }),
  closeAppeal: () => ({ reason: 'ownerDecided' }),
  tellCentre: () => ({}),
  tellOfNote: (road) => ({ note: last(road, 'noteOutcome')?.note ?? NONE, how: 'phone', whom: 'The reading room' }),
};
