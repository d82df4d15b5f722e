/** What can be stated about an order. Facts are appended, never overwritten; everything else is read off them. */

export type Role =
  | 'desk' | 'vet' | 'nurse' | 'radiographer' | 'manager'
  | 'owner' | 'agent' | 'reader' | 'queue';

export type Precision = 'day' | 'month' | 'year' | 'estimate';
/** `latest` is the latest possible birth day where it is known better than `precision` tells. */
export interface Birth { date: string; precision: Precision; latest?: string }
export interface Addressee { person: string; channel: 'mail' | 'post' | 'none' }
export interface Joint { joint: string; value?: number | string; reason?: string }
export type Purpose = 'sedation' | 'study' | 'sendAll' | 'statistics';
export type Cause = 'unpaid' | 'bounced' | 'closed' | 'lost' | 'noAnswer';
export const questions = ['season', 'pregnant', 'nursing', 'ill', 'medicine', 'operated'] as const;
export type Question = (typeof questions)[number];
export type Answer = 'yes' | 'no' | 'unknown';
export interface EmergencyWishes {
  resuscitate: 'yes' | 'no';
  limitMinor: number;
  currency: string;
  number: string;
  collectors: string[];
}
export interface FitnessProblem {
  code: 'OPERATOR' | 'EQUIPMENT' | 'VIEWS_NOT_HERE' | 'REPEAT_TOO_SOON';
  until?: string;
}
export type ClockName = 'ack' | 'result';

/** The payload of each fact. Days are local `YYYY-MM-DD`, ids and codes are strings. */
export interface Payloads {
  orderOpened: { order: string; dog: string; birth: Birth; numbers: string[]; addressees: Addressee[] };
  dogRestated: { birth?: Birth; numbers?: string[] };
  studyAdded: { study: string; protocol: string; version: string; centre: string };
  payerNamed: { payer: string };
  addresseesConfirmed: { addressees: Addressee[] };
  /** Whose yes is needed: any owner's, or one of each that is named. */
  signersNamed: { rule: 'any' | 'all'; signers: string[] };
  /** Somebody wants letters at any time, also at night or before a free day. */
  letterTimeChosen: { person: string; anyTime: boolean };
  orderCancelled: { why: string };
  referralOffered: { referral: string; to: string; expires: string; ownerAgreed: boolean };
  referralAnswered: { referral: string; answer: 'accepted' | 'declined' | 'takenBack'; why?: string };
  dogTransferred: { day: string; buyer: string };
  transferAgreed: { party: 'seller' | 'buyer' };
  practiceClosing: { closing: string; lastDay: string };
  handedOver: { from: string; to: string; ownerAgreed: boolean };
  dogDied: { day: string; inCare: boolean; cause: string };
  harmRecorded: { what: string };
  caseOwnerNamed: { person: string };
  silenceLifted: { why: string };
  legalHoldSet: { why: string };
  legalHoldLifted: { why: string; second: string };
  personErased: { person: string };
  consentGiven: {
    purpose: Purpose; visit?: string; study?: string; centre?: string; textVersion: string;
    answer: 'yes' | 'no'; signer: string; signerRole: 'owner' | 'agent'; authority?: string;
    /** The owner whose yes an agent gives. */
    for?: string;
    emergency?: Partial<EmergencyWishes>;
  };
  consentWithdrawn: { purpose: Purpose; visit?: string; study?: string; why?: string };

  visitOpened: {
    visit: string; studies: string[]; why: 'first' | 'missingViews' | 'rejected' | 'lost'; restUntil?: string;
  };
  studyLeftOut: { visit: string; study: string; why: string };
  visitBooked: { visit: string; day: string; start: string; where: string; operator: string; room: string };
  visitCancelled: { visit: string; side: 'owner' | 'practice'; why: string };
  visitMissed: { visit: string };
  estimateAccepted: {
    visit: string; amountMinor: number; currency: string; how: 'paper' | 'link' | 'phone'; payer: string;
  };
  answersGiven: {
    visit: string; stage: 'booking' | 'reminder' | 'admission'; answers: Partial<Record<Question, Answer>>;
  };
  answersJudged: { visit: string; go: boolean; until?: string; why: string };
  fitnessChecked: { visit: string; study: string; problems: FitnessProblem[] };
  admitted: { visit: string; weightKg: number; bodyCondition: number; fastedHours: number };
  identityScanned: {
    visit: string; place: 'admission' | 'table'; numbers: string[]; passes?: number; readers?: number;
  };
  identitySettled: { visit: string; why: string };
  ourDogSeenElsewhere: { visit: string };
  turnedAway: { visit: string; why: 'unwell' | 'identity' | 'unfit' | 'ownerDecided' | 'emergency' };
  examined: { visit: string; statusClass: 1 | 2 | 3 | 4 | 5; reason?: string };
  planSigned: { visit: string; plan: string; kind: 'first' | 'topUp'; vetPresent: boolean; weightKg: number };
  sedationStarted: { visit: string; plan: string };
  drugRecorded: { visit: string; entry: string; event: 'drawn' | 'given' | 'discarded' | 'reversal'; batch: string };
  readingTaken: { visit: string; device: string; n: number };
  eventRecorded: { visit: string; what: string };
  exposureTaken: {
    visit: string; exposure: string; view: string; serves: string[]; image: string; imageDay: string; people: string[];
  };
  roomLogged: { exposure: string; people: string[] };
  /** Points were set on a film in the room. The points themselves are kept apart, where no page before the sealing can read them. */
  filmMarked: { exposure: string; marking: string };
  /** How large the pixels of a PNG or JPEG are, as was said for the detector, and which way it lies; null takes that back. */
  filmSized: { exposure: string; size: { pixelMm: number; right: string; lower: string } | null };
  exposureAssigned: { exposure: string; serves: string[] };
  exposureDisowned: { exposure: string; why: 'otherDog' | 'testFilm' };
  imageChecked: { exposure: string; match: boolean; fields: string[] };
  imagesLost: { exposures: string[] };
  verdictGiven: { exposure: string; study: string; verdict: 'accept' | 'retake' | 'undecided'; reasons: string[] };
  imagingEnded: { visit: string; how: 'done' | 'stopped' | 'woke' };
  recoverySigned: { visit: string; signs: string[] };
  sheetGiven: { visit: string; document: string; to: string };
  wentHome: { visit: string; with: string };

  protocolChanged: { study: string; version: string; consentText?: string };
  protocolChangeSeen: { study: string; version: string };
  viewsSettled: { study: string; why: string };
  studyEnded: { study: string; why: 'ownerDecided' | 'notRepeated' | 'centreClosed' | 'notPossible' };
  packageSealed: { study: string; package: string; exposures: string[]; manifest: string; supplements?: string };
  packageSent: { study: string; package: string; send: string; centre: string; channel: string };
  sendOutcome: { study: string; send: string; outcome: 'handedOver' | 'bounced' | 'failed' | 'unknown' };
  sendResolved: { study: string; send: string; arrived: boolean };
  acknowledged: { study: string; send: string };
  autoReplied: { study: string };
  chaseSent: { study: string; clock: ClockName; day: string; digest: string };
  causeFound: { study: string; cause: Cause };
  causeCleared: { study: string; cause: Cause };
  chaseTaken: { study: string; person: string; lookAgain: string };
  centreClosed: { centre: string; from: string; until?: string };
  centreChanged: { study: string; centre: string };
  filmsRejected: { study: string; package: string; send: string; views: string[]; reasons: string[] };
  resultArrived: {
    study: string; result: string; ref: string; channel: 'page' | 'file' | 'post' | 'webhook' | 'phone';
    reading: 'first' | 'second'; valuesHash: string; joints: Joint[]; scan?: string;
  };
  resultKeyed: { study: string; result: string; valuesHash: string };
  resultChecked: { study: string; result: string; problems: ('IDENTITY' | 'RANGE' | 'SIDES' | 'DATE')[] };
  resultExplained: { study: string; result: string; why: string };
  resultRefused: { study: string; result: string; why: 'otherDog' | 'implausible' | 'sentTwice' };
  whichStandsAsked: { study: string };
  conflictSettled: { study: string; keep: string; why: string };
  resultAccepted: { study: string; result: string };
  resultWithdrawn: { study: string; result: string; why: 'otherDog' | 'centreTookBack' };
  phoneFirstSet: { study: string; until: string };
  ownerPhoned: { study: string; reached: boolean };
  letterReleased: {
    study: string; letter: string; kind: 'result' | 'correction' | 'filmsRejected'; result?: string; to: string[];
  };
  letterOutcome: { study: string; letter: string; to: string; outcome: 'delivered' | 'bounced' | 'unknown' };
  letterResolved: { study: string; letter: string; to: string; arrived: boolean };
  appealAsked: { study: string; result: string; asker: string };
  appealClosed: { study: string; why: 'ownerDecided' | 'notPossible' };
  centreTold: { study: string };
  /** What became of a note to an archive that has films which are not to be used; said once it failed. */
  noteOutcome: { study: string; note: string; outcome: 'arrived' | 'failed' | 'refused' };
  noteTold: { study: string; note: string; how: 'phone' | 'mail' };
  afterDeathDecided: { study: string; goOn: boolean };
  factStruck: { fact: string; why: string };
}

export type FactType = keyof Payloads;

export interface Envelope {
  /** Made by the client; the idempotency key. */
  id: string;
  /** When it happened, ISO in UTC. */
  at: string;
  /** When the server stored it, ISO in UTC. */
  rec: string;
  by: string;
  role: Role;
  practice: string;
  corrects?: string;
  /** Clinical and office data that moves nothing here. */
  detail?: Record<string, unknown>;
}

export type FactOf<T extends FactType> = { [K in T]: Envelope & { type: K } & Payloads[K] }[T];
export type Fact = FactOf<FactType>;
