import type { Fact } from '#libs/pathway/facts';
import type { Said } from '#libs/words/said';
import { t } from '#libs/words/spoken';
import { sayStored } from '#libs/words/stored';
import type { StoredFact } from '../record/order-record.js';
import { spokenDay } from '../record/day-words.js';

type Naming = Record<string, string>;
type Words = { [T in Fact['type']]?: (f: Extract<Fact, { type: T }>, name: (id: string) => string) => string };
const d = (f: Fact, field: string): string => (typeof f.detail?.[field] === 'string' ? (f.detail[field] as string) : '');

/** What a job noted, said now; an older fact has its text alone. */
const told = ({ detail }: Fact): string => sayStored({ words: typeof detail?.words === 'string' ? detail.words : '', sentences: (detail?.sentences as Said[] | undefined) ?? null }, t);

/** One line for each fact, as a colleague would say it. What is seen in the room only is not said here. */
const words: Words = {
  orderOpened: () => t('Order opened'),
  dogRestated: () => t('Dog’s birth date or numbers corrected'),
  studyAdded: (f, n) => t('Study added: {study}, {centre}', { study: n(f.study), centre: n(f.centre) }),
  payerNamed: (f) => t('Who pays: {name}', { name: d(f, 'name') }),
  addresseesConfirmed: () => t('Addressees of the result confirmed'),
  signersNamed: (f) => (f.rule === 'all' ? t('Every owner signs: {which}', { which: Array.isArray(f.detail?.names) ? f.detail.names.join(', ') : '' }) : t('Any owner’s yes is enough')),
  letterTimeChosen: (f) => `${d(f, 'name')} ${f.anyTime ? t('wants letters at any time') : t('wants letters only while somebody can be reached')}`,
  orderCancelled: (f) => t('Order cancelled: {why}', { why: f.why }),
  referralOffered: (f, n) => t('Referred to {to}, answer by {expires}', { to: n(f.to), expires: spokenDay(f.expires) }),
  referralAnswered: (f) => t('Referral {answer}{which}', { answer: ({ accepted: t('accepted'), declined: t('declined'), takenBack: t('taken back') })[f.answer], which: f.why ? `: ${f.why}` : '' }),
  practiceClosing: (f) => t('The practice closes on {lastDay}', { lastDay: spokenDay(f.lastDay) }),
  handedOver: (f) => t('Handed over to {name}, with the owner’s yes', { name: d(f, 'name') }),
  dogTransferred: (f) => t('Dog sold on {day}', { day: spokenDay(f.day) }),
  transferAgreed: (f) => t('The {party} agrees to sharing the result', { party: t.known(f.party) }),
  dogDied: (f) => t('Dog died on {day}{which}', { day: spokenDay(f.day), which: f.inCare ? t(', in our care') : '' }),
  harmRecorded: () => t('Harm recorded; the record is frozen'),
  caseOwnerNamed: (f) => t('Speaks with the family: {name}', { name: d(f, 'name') }),
  silenceLifted: (f) => t('Silence lifted: {why}', { why: f.why }),
  legalHoldLifted: () => t('Legal hold lifted by two people'),
  personErased: () => t('A person’s data erased on request'),
  consentGiven: (f, n) => `${{ sedation: t('Sedation'), study: n(f.study ?? ''), sendAll: t('Sending every film'), statistics: t('Use in statistics') }[f.purpose]}: ${t.known(f.answer)}, ${d(f, 'name')}${f.signerRole === 'agent' ? t(' as agent') : ''}`,
  consentWithdrawn: (f) => t('Consent taken back: {which}', { which: f.purpose === 'sendAll' ? t('sending every film') : f.purpose }),
  visitOpened: (f) => (f.why === 'first' ? t('Visit planned') : t('A further visit planned')),
  studyLeftOut: (f, n) => t('Left out of the visit: {study}: {why}', { study: n(f.study), why: f.why }),
  visitBooked: (f) => t('Booked for {day}, {start}, {roomName}', { day: spokenDay(f.day), start: f.start, roomName: d(f, 'roomName') }),
  visitCancelled: (f) => t('Visit cancelled by the {side}: {why}', { side: t.known(f.side), why: f.why }),
  visitMissed: () => t('Did not come'),
  estimateAccepted: (f) => t('Estimate accepted ({how}): {toFixed} {currency}, {name}', { how: t.known(f.how), toFixed: (f.amountMinor / 100).toFixed(2), currency: f.currency, name: d(f, 'name') }),
  answersGiven: (f) => t('Questions answered ({stage})', { stage: t.known(f.stage) }),
  answersJudged: (f) => t('Vet judged the answers: {which}. {why}', { which: f.go ? t('go on') : t('not before {which}', { which: f.until ? spokenDay(f.until) : t('a later day') }), why: f.why }),
  fitnessChecked: (f, n) => `${n(f.study)}: ${f.problems.length === 0 ? t('operator and equipment fit') : t('operator, equipment or interval do not fit')}`,
  admitted: (f) => t('Admitted: {weightKg} kg, body condition {bodyCondition} of 9, {fastedHours} h without food', { weightKg: f.weightKg, bodyCondition: f.bodyCondition, fastedHours: f.fastedHours }),
  identityScanned: (f) => t('Scanned at {which}: {join}', { which: f.place === 'table' ? t('the table') : t('admission'), join: f.numbers.join(', ') || t('no number found') }),
  identitySettled: (f) => t('Identity settled by a vet: {why}', { why: f.why }),
  ourDogSeenElsewhere: () => t('This dog was scanned under another order'),
  turnedAway: (f) => t('Turned away: {note}', { note: d(f, 'note') || f.why }),
  examined: (f) => `Examined: physical status class ${['I', 'II', 'III', 'IV', 'V'][f.statusClass - 1]}`,
  planSigned: (f) => t('Sedation plan signed for {weightKg} kg{which}', { weightKg: f.weightKg, which: f.kind === 'topUp' ? t(' (top-up)') : '' }),
  sedationStarted: () => t('Sedation started'),
  drugRecorded: (f) => t('{event}: {drug}, batch {batch}', { event: { drawn: t('Drawn'), given: t('Given'), discarded: t('Discarded'), reversal: t('Reversal given') }[f.event], drug: d(f, 'drug'), batch: f.batch }),
  readingTaken: () => t('Reading taken'),
  eventRecorded: (f) => t('Event: {what}', { what: f.what }),
  exposureTaken: (f, n) => t('Film taken: {view}', { view: n(f.view) }),
  roomLogged: () => t('People in the room logged'),
  filmMarked: () => t('Points set on a film'),
  filmSized: (f) => (f.size ? t('Pixels of a picture said to be {size, number, ::.####} mm, as for {detector}', { size: f.size.pixelMm, detector: d(f, 'detector') }) : t('Size of a picture’s pixels taken back')),
  exposureAssigned: () => t('Film assigned'),
  exposureDisowned: (f) => t('Film taken out: {which}', { which: f.why === 'otherDog' ? t('another dog') : t('test film') }),
  imageChecked: (f) => (f.match ? t('Image fits the order') : t('Image differs: {join}', { join: f.fields.join(', ') })),
  verdictGiven: (f, n) => `${n(f.study)}: ${{ accept: t('film accepted'), retake: `retake, ${f.reasons.join(', ')}`, undecided: t('verdict on a film taken back') }[f.verdict]}`,
  imagingEnded: (f) => ({ done: t('Imaging ended'), stopped: t('Imaging stopped'), woke: t('The dog woke; imaging ended') })[f.how],
  recoverySigned: () => t('Recovery signs signed'),
  sheetGiven: (f) => t('Going-home sheet explained to {to}', { to: f.to }),
  wentHome: (f) => t('Gone home with {with}', { with: f.with }),
  protocolChanged: (f, n) => t('{study}: version {version} of the protocol is in force', { study: n(f.study), version: f.version }),
  protocolChangeSeen: (f, n) => t('{study}: version {version} was read', { study: n(f.study), version: f.version }),
  viewsSettled: (f) => t('Goes on with the views there are: {why}', { why: f.why }),
  studyEnded: (f, n) => t('{study} ended', { study: n(f.study) }),
  packageSealed: (f) => t('Package {number} sealed, {count} films', { number: d(f, 'number'), count: f.exposures.length }),
  packageSent: (f) => t('Package sent to {centreName}', { centreName: d(f, 'centreName') }),
  sendOutcome: (f) => t('Sending: {outcome}', { outcome: { handedOver: told(f) || t('mail server took it'), bounced: t('came back'), failed: [t('did not work'), told(f)].filter(Boolean).join('. '), unknown: t('outcome not known') }[f.outcome] }),
  sendResolved: (f) => (f.arrived ? t('Package found to have arrived') : t('Package found not to have arrived')),
  acknowledged: () => t('Centre has the package'),
  chaseSent: (f) => t('Centre reminded: {which}', { which: f.clock === 'ack' ? t('package not acknowledged') : t('result overdue') }),
  causeFound: (f) => t('No answer because: {cause}', { cause: t.known(f.cause) }),
  causeCleared: (f) => t('Cleared: {cause}', { cause: t.known(f.cause) }),
  autoReplied: (f) => t('An automatic answer came from the centre{which}; it counts for nothing', { which: d(f, 'note') ? `: ${d(f, 'note')}` : '' }),
  centreClosed: (f, n) => t('{centre} is closed {which}', { centre: n(f.centre), which: f.until ? t('from {from} to {until}', { from: spokenDay(f.from), until: spokenDay(f.until) }) : t('for good from {from}', { from: spokenDay(f.from) }) }),
  chaseTaken: (f, n) => t('{person} looks after it until {lookAgain}', { person: n(f.person), lookAgain: spokenDay(f.lookAgain) }),
  centreChanged: (f) => t('Centre changed to {name}', { name: d(f, 'name') }),
  filmsRejected: (f, n) => t('Sent back by the centre: {join}. {join2}', { join: f.views.map(n).join(', '), join2: f.reasons.join(' ') }),
  resultArrived: (f, n) => t('{study}: reading arrived ({channel})', { study: n(f.study), channel: { page: t('reader’s page'), file: t('file'), post: t('post'), webhook: t('message'), phone: t('phone') }[f.channel] }),
  resultKeyed: () => t('Reading keyed from the scan'),
  resultChecked: () => t('Reading compared with the order'),
  resultExplained: (f) => t('Vet explains: {why}', { why: f.why }),
  resultRefused: (f) => t('Reading refused: {why}', { why: { otherDog: t('another dog'), implausible: t('not plausible'), sentTwice: t('sent twice') }[f.why] }),
  whichStandsAsked: (f, n) => t('{study}: the centre was asked by mail which reading stands', { study: n(f.study) }),
  conflictSettled: (f) => t('Conflict settled by the centre, {saidBy}: {why}', { saidBy: d(f, 'saidBy'), why: f.why }),
  resultAccepted: (f, n) => t('{study}: reading accepted', { study: n(f.study) }),
  resultWithdrawn: () => t('Reading withdrawn'),
  phoneFirstSet: (f) => t('Phone first, by {until}', { until: spokenDay(f.until) }),
  ownerPhoned: (f) => (f.reached ? t('Owner was reached by phone') : t('Owner not reached by phone')),
  letterReleased: (f) => ({ result: t('Letter released'), correction: t('Correction released'), filmsRejected: t('Letter about films released') })[f.kind],
  letterOutcome: (f, n) => t('Letter to {to}: {outcome}', { to: n(f.to), outcome: { delivered: t('delivered'), bounced: t('came back'), unknown: t('outcome not known') }[f.outcome] }),
  letterResolved: (f, n) => t('Letter to {to}: {which}', { to: n(f.to), which: f.arrived ? t('it came') : t('it did not come') }),
  appealAsked: () => t('Second reading asked for'),
  appealClosed: () => t('Appeal closed'),
  centreTold: () => t('Centre told that the owner withdrew'),
  noteOutcome: (f) => ({ arrived: t('The archive knows of the films that are not to be used'), failed: t('The archive could not be told of films that are not to be used. {words}', { words: told(f) }), refused: t('The archive did not take the note on films that are not to be used. {words}', { words: told(f) }) })[f.outcome],
  noteTold: (f) => t('Centre told by {how, select, phone {phone} other {mail}} which films are not to be used: {whom}', { how: f.how, whom: d(f, 'whom') }),
  afterDeathDecided: (f) => (f.goOn ? t('The study goes on') : t('The study ends')),
};

/** Readings are in the record of the sedation; here they would hide everything else. */
const QUIET = new Set(['readingTaken', 'fitnessChecked']);

/** One fact in words, also one that the page's list leaves out. */
export function happenedLine(fact: Fact, names: Naming): string {
  const name = (id: string) => names[id] ?? 'somebody';
  return (words[fact.type] as ((f: Fact, n: typeof name) => string) | undefined)?.(fact, name) ?? fact.type;
}

export function happened(facts: readonly StoredFact[], late: readonly string[], names: Naming): { at: string; what: string; by: string; late: boolean }[] {
  return facts
    .filter((f) => !QUIET.has(f.type))
    .map((f) => ({ at: f.at, what: happenedLine(f, names), by: f.byName, late: late.includes(f.id) }))
    .reverse();
}
