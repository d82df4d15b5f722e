import type { Fact } from '#libs/pathway/facts';
import type { StoredFact } from '../record/order-record.js';
import { shortDay } from '../record/day-words.js';

type Naming = Record<string, string>;
type Words = { [T in Fact['type']]?: (f: Extract<Fact, { type: T }>, name: (id: string) => string) => string };
const d = (f: Fact, field: string): string => (typeof f.detail?.[field] === 'string' ? (f.detail[field] as string) : '');

/** One line for each fact, as a colleague would say it. What is seen in the room only is not said here. */
const words: Words = {
  orderOpened: () => 'Order opened',
  dogRestated: () => 'Dog’s birth date or numbers corrected',
  studyAdded: (f, n) => `Study added: ${n(f.study)}, ${n(f.centre)}`,
  payerNamed: (f) => `Who pays: ${d(f, 'name')}`,
  addresseesConfirmed: () => 'Addressees of the result confirmed',
  signersNamed: (f) => (f.rule === 'all' ? `Every owner signs: ${Array.isArray(f.detail?.names) ? f.detail.names.join(', ') : ''}` : 'Any owner’s yes is enough'),
  letterTimeChosen: (f) => `${d(f, 'name')} ${f.anyTime ? 'wants letters at any time' : 'wants letters only while somebody can be reached'}`,
  orderCancelled: (f) => `Order cancelled: ${f.why}`,
  referralOffered: (f, n) => `Referred to ${n(f.to)}, answer by ${shortDay(f.expires)}`,
  referralAnswered: (f) => `Referral ${({ accepted: 'accepted', declined: 'declined', takenBack: 'taken back' })[f.answer]}${f.why ? `: ${f.why}` : ''}`,
  practiceClosing: (f) => `The practice closes on ${shortDay(f.lastDay)}`,
  handedOver: (f) => `Handed over to ${d(f, 'name')}, with the owner’s yes`,
  dogTransferred: (f) => `Dog sold on ${shortDay(f.day)}`,
  transferAgreed: (f) => `The ${f.party} agrees to sharing the result`,
  dogDied: (f) => `Dog died on ${shortDay(f.day)}${f.inCare ? ', in our care' : ''}`,
  harmRecorded: () => 'Harm recorded; the record is frozen',
  caseOwnerNamed: (f) => `Speaks with the family: ${d(f, 'name')}`,
  silenceLifted: (f) => `Silence lifted: ${f.why}`,
  legalHoldLifted: () => 'Legal hold lifted by two people',
  personErased: () => 'A person’s data erased on request',
  consentGiven: (f, n) => `${{ sedation: 'Sedation', study: n(f.study ?? ''), sendAll: 'Sending every film', statistics: 'Use in statistics' }[f.purpose]}: ${f.answer}, ${d(f, 'name')}${f.signerRole === 'agent' ? ' as agent' : ''}`,
  consentWithdrawn: (f) => `Consent taken back: ${f.purpose === 'sendAll' ? 'sending every film' : f.purpose}`,
  visitOpened: (f) => (f.why === 'first' ? 'Visit planned' : 'A further visit planned'),
  studyLeftOut: (f, n) => `Left out of the visit: ${n(f.study)}: ${f.why}`,
  visitBooked: (f) => `Booked for ${shortDay(f.day)}, ${f.start}, ${d(f, 'roomName')}`,
  visitCancelled: (f) => `Visit cancelled by the ${f.side}: ${f.why}`,
  visitMissed: () => 'Did not come',
  estimateAccepted: (f) => `Estimate accepted (${f.how}): ${(f.amountMinor / 100).toFixed(2)} ${f.currency}, ${d(f, 'name')}`,
  answersGiven: (f) => `Questions answered (${f.stage})`,
  answersJudged: (f) => `Vet judged the answers: ${f.go ? 'go on' : `not before ${f.until ? shortDay(f.until) : 'a later day'}`}. ${f.why}`,
  fitnessChecked: (f, n) => `${n(f.study)}: ${f.problems.length === 0 ? 'operator and equipment fit' : 'operator, equipment or interval do not fit'}`,
  admitted: (f) => `Admitted: ${f.weightKg} kg, body condition ${f.bodyCondition} of 9, ${f.fastedHours} h without food`,
  identityScanned: (f) => `Scanned at ${f.place === 'table' ? 'the table' : 'admission'}: ${f.numbers.join(', ') || 'no number found'}`,
  identitySettled: (f) => `Identity settled by a vet: ${f.why}`,
  ourDogSeenElsewhere: () => 'This dog was scanned under another order',
  turnedAway: (f) => `Turned away: ${d(f, 'note') || f.why}`,
  examined: (f) => `Examined: physical status class ${['I', 'II', 'III', 'IV', 'V'][f.statusClass - 1]}`,
  planSigned: (f) => `Sedation plan signed for ${f.weightKg} kg${f.kind === 'topUp' ? ' (top-up)' : ''}`,
  sedationStarted: () => 'Sedation started',
  drugRecorded: (f) => `${{ drawn: 'Drawn', given: 'Given', discarded: 'Discarded', reversal: 'Reversal given' }[f.event]}: ${d(f, 'drug')}, batch ${f.batch}`,
  readingTaken: () => 'Reading taken',
  eventRecorded: (f) => `Event: ${f.what}`,
  exposureTaken: (f, n) => `Film taken: ${n(f.view)}`,
  roomLogged: () => 'People in the room logged',
  exposureAssigned: () => 'Film assigned',
  exposureDisowned: (f) => `Film taken out: ${f.why === 'otherDog' ? 'another dog' : 'test film'}`,
  imageChecked: (f) => (f.match ? 'Image fits the order' : `Image differs: ${f.fields.join(', ')}`),
  verdictGiven: (f, n) => `${n(f.study)}: ${f.verdict === 'accept' ? 'film accepted' : `retake, ${f.reasons.join(', ')}`}`,
  imagingEnded: (f) => ({ done: 'Imaging ended', stopped: 'Imaging stopped', woke: 'The dog woke; imaging ended' })[f.how],
  recoverySigned: () => 'Recovery signs signed',
  sheetGiven: (f) => `Going-home sheet explained to ${f.to}`,
  wentHome: (f) => `Gone home with ${f.with}`,
  protocolChanged: (f, n) => `${n(f.study)}: version ${f.version} of the protocol is in force`,
  protocolChangeSeen: (f, n) => `${n(f.study)}: version ${f.version} was read`,
  viewsSettled: (f) => `Goes on with the views there are: ${f.why}`,
  studyEnded: (f, n) => `${n(f.study)} ended`,
  packageSealed: (f) => `Package ${d(f, 'number')} sealed, ${f.exposures.length} films`,
  packageSent: (f) => `Package sent to ${d(f, 'centreName')}`,
  sendOutcome: (f) => `Sending: ${{ handedOver: 'mail server took it', bounced: 'came back', failed: 'did not work', unknown: 'outcome not known' }[f.outcome]}`,
  sendResolved: (f) => (f.arrived ? 'Package found to have arrived' : 'Package found not to have arrived'),
  acknowledged: () => 'Centre has the package',
  chaseSent: (f) => `Centre reminded: ${f.clock === 'ack' ? 'package not acknowledged' : 'result overdue'}`,
  causeFound: (f) => `No answer because: ${f.cause}`,
  causeCleared: (f) => `Cleared: ${f.cause}`,
  autoReplied: (f) => `An automatic answer came from the centre${d(f, 'note') ? `: ${d(f, 'note')}` : ''}; it counts for nothing`,
  centreClosed: (f, n) => `${n(f.centre)} is closed ${f.until ? `from ${shortDay(f.from)} to ${shortDay(f.until)}` : `for good from ${shortDay(f.from)}`}`,
  chaseTaken: (f, n) => `${n(f.person)} looks after it until ${shortDay(f.lookAgain)}`,
  centreChanged: (f) => `Centre changed to ${d(f, 'name')}`,
  filmsRejected: (f, n) => `Sent back by the centre: ${f.views.map(n).join(', ')}. ${f.reasons.join(' ')}`,
  resultArrived: (f, n) => `${n(f.study)}: reading arrived (${{ page: 'reader’s page', file: 'file', post: 'post', webhook: 'message', phone: 'phone' }[f.channel]})`,
  resultKeyed: () => 'Reading keyed from the scan',
  resultChecked: () => 'Reading compared with the order',
  resultExplained: (f) => `Vet explains: ${f.why}`,
  resultRefused: (f) => `Reading refused: ${{ otherDog: 'another dog', implausible: 'not plausible', sentTwice: 'sent twice' }[f.why]}`,
  conflictSettled: (f) => `Conflict settled by the centre, ${d(f, 'saidBy')}: ${f.why}`,
  resultAccepted: (f, n) => `${n(f.study)}: reading accepted`,
  resultWithdrawn: () => 'Reading withdrawn',
  phoneFirstSet: (f) => `Phone first, by ${shortDay(f.until)}`,
  ownerPhoned: (f) => (f.reached ? 'Owner was reached by phone' : 'Owner not reached by phone'),
  letterReleased: (f) => ({ result: 'Letter released', correction: 'Correction released', filmsRejected: 'Letter about films released' })[f.kind],
  letterOutcome: (f, n) => `Letter to ${n(f.to)}: ${{ delivered: 'delivered', bounced: 'came back', unknown: 'outcome not known' }[f.outcome]}`,
  letterResolved: (f, n) => `Letter to ${n(f.to)}: ${f.arrived ? 'it came' : 'it did not come'}`,
  appealAsked: () => 'Second reading asked for',
  appealClosed: () => 'Appeal closed',
  centreTold: () => 'Centre told that the owner withdrew',
  afterDeathDecided: (f) => (f.goOn ? 'The study goes on' : 'The study ends'),
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
