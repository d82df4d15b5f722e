import type { FactType, Fact, Payloads, Role } from '../facts.js';
import { questions } from '../facts.js';
import type { Chooser } from './chooser.js';

const day = (c: Chooser): string => c.of(['2026-11-20', '2026-11-25', '2026-11-26', '2026-11-30', '2026-12-08', '2027-01-04']);
const addressees = (c: Chooser) => c.of([[{ person: 'owner', channel: 'mail' as const }], [], [{ person: 'buyer', channel: 'post' as const }]]);
const answer = (c: Chooser) => c.of(['no', 'no', 'no', 'yes', 'unknown'] as const);
const study = (c: Chooser): { study: string } => ({ study: c.of(['s1', 's2']) });
const visit = (c: Chooser): { visit: string } => ({ visit: c.of(['v1', 'v2']) });
const exposure = (c: Chooser): { exposure: string } => ({ exposure: c.of(['e1', 'e2', 'e3']) });
const result = (c: Chooser): { study: string; result: string } => ({ ...study(c), result: c.of(['r1', 'r2']) });
const centre = (c: Chooser): { centre: string } => ({ centre: c.of(['centre-weir', 'centre-ford', 'centre-nowhere']) });
const why = 'x';

/** Any payload at all, over few ids so that facts meet. */
export const randomPayload: { [T in FactType]: (c: Chooser) => Payloads[T] } = {
  orderOpened: (c) => ({
    order: 'o', dog: 'd', numbers: c.of([['999000000000001'], []]), addressees: addressees(c),
    birth: { date: c.of(['2025-01-10', '2026-08-05', '2026-08-06']), precision: c.of(['day', 'month', 'year', 'estimate']) },
  }),
  dogRestated: (c) => c.of([{ numbers: ['999000000000001', '999000000000002'] }, { birth: { date: '2026-08-06', precision: 'day' as const } }]),
  studyAdded: (c) => ({ ...study(c), protocol: c.of(['hipLaxity', 'hipExtended', 'elbow', 'none']), version: '1', ...centre(c) }),
  payerNamed: () => ({ payer: 'owner' }),
  addresseesConfirmed: (c) => ({ addressees: addressees(c) }),
  signersNamed: (c) => c.of([{ rule: 'any' as const, signers: [] }, { rule: 'all' as const, signers: ['owner'] }]),
  letterTimeChosen: (c) => ({ person: c.of(['owner', 'buyer']), anyTime: c.bool() }),
  orderCancelled: () => ({ why }),
  referralOffered: (c) => ({ referral: c.of(['f1', 'f2']), to: 'p-lock', expires: day(c), ownerAgreed: c.bool() }),
  referralAnswered: (c) => ({ referral: c.of(['f1', 'f2']), answer: c.of(['accepted', 'declined', 'takenBack']) }),
  dogTransferred: (c) => ({ day: day(c), buyer: 'buyer' }),
  transferAgreed: (c) => ({ party: c.of(['seller', 'buyer']) }),
  practiceClosing: (c) => ({ closing: c.of(['p-mill', 'p-lock']), lastDay: day(c) }),
  handedOver: (c) => ({ from: c.of(['p-mill', 'p-lock']), to: c.of(['p-lock', 'p-reed']), ownerAgreed: c.bool() }),
  dogDied: (c) => ({ day: day(c), inCare: c.bool(), cause: why }),
  harmRecorded: () => ({ what: why }),
  caseOwnerNamed: () => ({ person: 'm' }),
  silenceLifted: () => ({ why }),
  legalHoldSet: () => ({ why }),
  legalHoldLifted: (c) => ({ why, second: c.of(['someone', 'second']) }),
  personErased: (c) => ({ person: c.of(['owner', 'buyer']) }),
  consentGiven: (c) => ({
    purpose: c.of(['sedation', 'study', 'sendAll', 'statistics']), ...visit(c), ...study(c), ...centre(c),
    textVersion: c.of(['sed-1', 'lax-1', 'ext-1', 'elb-1', 'all-1']), answer: c.of(['yes', 'yes', 'no']), signer: 'owner',
    signerRole: c.of(['owner', 'agent']),
    ...(c.bool() ? { emergency: { resuscitate: 'yes' as const, limitMinor: 1, currency: 'EUR', number: '1', collectors: ['owner'] } } : {}),
  }),
  consentWithdrawn: (c) => ({ purpose: c.of(['sedation', 'study', 'sendAll', 'statistics']), ...visit(c), ...study(c) }),
  visitOpened: (c) => ({ ...visit(c), studies: c.of([['s1'], ['s2'], ['s1', 's2'], [], ['s9']]), why: 'first', ...(c.bool() ? { restUntil: day(c) } : {}) }),
  studyLeftOut: (c) => ({ ...visit(c), ...study(c), why }),
  visitBooked: (c) => ({ ...visit(c), day: day(c), start: '09:00', where: c.of(['p-mill', 'p-lock', 'p-nowhere']), operator: 'a', room: 'r' }),
  visitCancelled: (c) => ({ ...visit(c), side: c.of(['owner', 'practice']), why }),
  visitMissed: visit,
  estimateAccepted: (c) => ({ ...visit(c), amountMinor: 1, currency: 'EUR', how: 'link', payer: 'owner' }),
  answersGiven: (c) => ({
    ...visit(c), stage: c.of(['booking', 'reminder', 'admission']),
    answers: Object.fromEntries(questions.filter(() => c.below(5) > 0).map((question) => [question, answer(c)])),
  }),
  answersJudged: (c) => ({ ...visit(c), go: c.bool(), why, ...(c.bool() ? { until: day(c) } : {}) }),
  fitnessChecked: (c) => ({ ...visit(c), ...study(c), problems: c.of([[], [{ code: 'OPERATOR' as const }], [{ code: 'REPEAT_TOO_SOON' as const, until: day(c) }]]) }),
  admitted: (c) => ({ ...visit(c), weightKg: 20, bodyCondition: 5, fastedHours: 8 }),
  identityScanned: (c) => ({ ...visit(c), place: c.of(['admission', 'table']), numbers: c.of([['999000000000001'], ['999000000000001'], [], ['999000000000099']]) }),
  identitySettled: (c) => ({ ...visit(c), why }),
  ourDogSeenElsewhere: visit,
  turnedAway: (c) => ({ ...visit(c), why: 'unwell' }),
  examined: (c) => ({ ...visit(c), statusClass: c.of([1, 2, 3, 4]), ...(c.bool() ? { reason: why } : {}) }),
  planSigned: (c) => ({ ...visit(c), plan: c.of(['n1', 'n2', 'n3']), kind: c.of(['first', 'topUp']), vetPresent: c.below(4) > 0, weightKg: c.of([20, 20, 21]) }),
  sedationStarted: (c) => ({ ...visit(c), plan: c.of(['n1', 'n2', 'n3']) }),
  drugRecorded: (c) => ({ ...visit(c), entry: c.of(['d1', 'd2']), event: 'given', batch: 'b' }),
  readingTaken: (c) => ({ ...visit(c), device: 'm', n: c.below(9) }),
  eventRecorded: (c) => ({ ...visit(c), what: why }),
  exposureTaken: (c) => {
    const { exposure: id } = exposure(c);
    return {
      ...visit(c), exposure: id, image: `h-${id}`, view: c.of(['vdExtended', 'vdCompression', 'vdDistraction', 'mlFlexedLeft']),
      serves: c.of([['s1'], ['s2'], ['s1', 's2'], []]), imageDay: day(c), people: c.of([['a'], []]),
    };
  },
  roomLogged: (c) => ({ ...exposure(c), people: ['a'] }),
  filmMarked: (c) => ({ ...exposure(c), marking: c.of(['m1', 'm2']) }),
  filmSized: (c) => ({ ...exposure(c), size: c.of([null, { pixelMm: 0.14, right: 'left', lower: 'tail' }]) }),
  exposureAssigned: (c) => ({ ...exposure(c), serves: c.of([['s1'], ['s2'], ['s1', 's2']]) }),
  exposureDisowned: (c) => ({ ...exposure(c), why: 'testFilm' }),
  imageChecked: (c) => ({ ...exposure(c), match: c.bool(), fields: [] }),
  imagesLost: (c) => ({ exposures: [exposure(c).exposure] }),
  verdictGiven: (c) => ({ ...exposure(c), ...study(c), verdict: c.of(['accept', 'accept', 'retake', 'undecided']), reasons: [] }),
  imagingEnded: (c) => ({ ...visit(c), how: c.of(['done', 'stopped', 'woke']) }),
  recoverySigned: (c) => ({ ...visit(c), signs: ['stands'] }),
  sheetGiven: (c) => ({ ...visit(c), document: 'g', to: 'owner' }),
  wentHome: (c) => ({ ...visit(c), with: 'owner' }),
  protocolChanged: (c) => ({ ...study(c), version: c.of(['2', '3']), ...(c.bool() ? { consentText: 'lax-2' } : {}) }),
  protocolChangeSeen: (c) => ({ ...study(c), version: c.of(['2', '3']) }),
  viewsSettled: (c) => ({ ...study(c), why }),
  studyEnded: (c) => ({ ...study(c), why: 'ownerDecided' }),
  packageSealed: (c) => ({
    ...study(c), package: c.of(['k1', 'k2']), exposures: c.of([['e1'], ['e1', 'e2'], []]), manifest: 'm',
    ...(c.below(4) === 0 ? { supplements: 'k1' } : {}),
  }),
  packageSent: (c) => ({ ...study(c), package: c.of(['k1', 'k2']), send: c.of(['z1', 'z2']), ...centre(c), channel: 'link' }),
  sendOutcome: (c) => ({ ...study(c), send: c.of(['z1', 'z2']), outcome: c.of(['handedOver', 'bounced', 'failed', 'unknown']) }),
  sendResolved: (c) => ({ ...study(c), send: c.of(['z1', 'z2']), arrived: c.bool() }),
  acknowledged: (c) => ({ ...study(c), send: c.of(['z1', 'z2']) }),
  autoReplied: study,
  chaseSent: (c) => ({ ...study(c), clock: c.of(['ack', 'result']), day: day(c), digest: 'g' }),
  causeFound: (c) => ({ ...study(c), cause: c.of(['unpaid', 'bounced', 'noAnswer']) }),
  causeCleared: (c) => ({ ...study(c), cause: c.of(['unpaid', 'bounced', 'noAnswer']) }),
  chaseTaken: (c) => ({ ...study(c), person: 'm', lookAgain: day(c) }),
  centreClosed: (c) => ({ ...centre(c), from: day(c), ...(c.bool() ? { until: day(c) } : {}) }),
  centreChanged: (c) => ({ ...study(c), ...centre(c) }),
  filmsRejected: (c) => ({ ...study(c), package: c.of(['k1', 'k2']), send: c.of(['z1', 'z2']), views: c.of([['vdExtended'], []]), reasons: ['rotated'] }),
  resultArrived: (c) => ({
    ...result(c), ref: c.of(['R1', 'R2']), channel: c.of(['page', 'page', 'file', 'post', 'webhook', 'phone']),
    reading: c.of(['first', 'first', 'second']), valuesHash: c.of(['a', 'b']), joints: [], ...(c.bool() ? { scan: 'doc' } : {}),
  }),
  resultKeyed: (c) => ({ ...result(c), valuesHash: c.of(['a', 'b']) }),
  resultChecked: (c) => ({ ...result(c), problems: c.of([[], ['IDENTITY' as const], ['RANGE' as const, 'DATE' as const]]) }),
  resultExplained: (c) => ({ ...result(c), why }),
  resultRefused: (c) => ({ ...result(c), why: 'implausible' }),
  whichStandsAsked: study,
  conflictSettled: (c) => ({ ...study(c), keep: c.of(['r1', 'r2']), why }),
  resultAccepted: result,
  resultWithdrawn: (c) => ({ ...result(c), why: 'otherDog' }),
  phoneFirstSet: (c) => ({ ...study(c), until: day(c) }),
  ownerPhoned: (c) => ({ ...study(c), reached: c.bool() }),
  letterReleased: (c) => ({ ...result(c), letter: c.of(['l1', 'l2']), kind: c.of(['result', 'result', 'correction']), to: c.of([['owner'], ['owner', 'buyer'], []]) }),
  letterOutcome: (c) => ({ ...study(c), letter: c.of(['l1', 'l2']), to: c.of(['owner', 'buyer']), outcome: c.of(['delivered', 'bounced', 'unknown']) }),
  letterResolved: (c) => ({ ...study(c), letter: c.of(['l1', 'l2']), to: c.of(['owner', 'buyer']), arrived: c.bool() }),
  appealAsked: (c) => ({ ...result(c), asker: 'owner' }),
  appealClosed: (c) => ({ ...study(c), why: 'notPossible' }),
  centreTold: study,
  noteOutcome: (c) => ({ ...study(c), note: c.of(['m1', 'm2']), outcome: c.of(['failed', 'refused', 'arrived']) }),
  noteTold: (c) => ({ ...study(c), note: c.of(['m1', 'm2']), how: c.of(['phone', 'mail']) }),
  afterDeathDecided: (c) => ({ ...study(c), goOn: c.bool() }),
  factStruck: (c) => ({ fact: `f${c.below(30)}`, why }),
};

export const factTypes = Object.keys(randomPayload) as FactType[];

export interface When { id: string; at: string; rec?: string; by?: string; role?: Role }

export function fact<T extends FactType>(type: T, payload: Payloads[T], { id, at, rec = at, by = 'someone', role = 'desk' }: When): Fact {
  return { id, type, at, rec, by, role, practice: 'p-mill', ...payload } as unknown as Fact;
}

