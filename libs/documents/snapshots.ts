import type { Standing } from '#libs/contracts/standing';
import type { Language } from '#libs/words/languages';
import type { PrintedFacts } from './check-code.js';

/**
 * What each paper is printed from. A snapshot is plain JSON, frozen when the paper is made and stored
 * beside it with its hash: the same snapshot always gives the same bytes. Nothing is looked up while printing,
 * so every name, date and sentence that may differ from dog to dog stands here.
 */

/** Raised whenever the print of a paper changes, so that a stored snapshot names the template it was printed with. */
export const LETTER_TEMPLATE_VERSION = 2;
export const CERTIFICATE_TEMPLATE_VERSION = 1;
export const GOING_HOME_TEMPLATE_VERSION = 1;
export const DAY_SHEET_TEMPLATE_VERSION = 1;
export const CONSENT_COPY_TEMPLATE_VERSION = 1;

export type Paper = 'A4' | 'LETTER';

/** A calendar day as `2026-11-24`. */
export type LocalDate = string;

/** A moment with the practice's own offset, as `2026-11-25T09:40:00+01:00`: printed as it stands, never converted. */
export type Moment = string;

interface Sheet {
  templateVersion: number;
  paper: Paper;
  /** The language that the paper was written in, its fixed words and what is frozen here alike. */
  lang: Language;
  /** Also the creation date inside the file. */
  issuedAt: Moment;
  practice: PracticeOnPaper;
}

export interface PracticeOnPaper {
  name: string;
  addressLines: string[];
  phone: string;
}

export interface PersonOnPaper {
  name: string;
  /** As a person would say it: "vet", "nurse", "owner". */
  role: string;
}

export interface DogOnPaper {
  /** What the owner calls the dog; the letter speaks of the dog by it. */
  callName: string;
  registeredName: string | null;
  breed: string;
  sex: 'male' | 'female' | 'unknown';
  /** Both the same when the day is known. */
  birth: { earliest: LocalDate; latest: LocalDate };
  /** Digits as stored; null where the dog has none. */
  transponder: string | null;
  studBookNumber: string | null;
}

/** One joint, left or right from the dog's own view. */
export interface JointOnPaper {
  joint: 'hip' | 'elbow';
  side: 'left' | 'right';
  finding: JointValue | JointWithoutValue;
}

export interface JointValue {
  kind: 'value';
  /** As printed large, decimals of the protocol kept: "0.38", "grade B", "grade 1". */
  value: string;
  /** What stands after the value, "" where it has none: "°". */
  unit: string;
  /** The value in an owner's words: "moves out by a little over a third of the ball's half width". */
  words: string;
  /** Further readings of the same joint: "Norberg angle 103°", "no primary lesion seen". */
  also: string[];
  /** "Signs of arthritis were seen." and the like, one sentence each; empty where nothing was flagged. */
  flags: string[];
  /** What a second look at the same dog might give; null where no figure is published for this protocol. */
  secondLook: { lower: string; upper: string; source: string } | null;
}

export interface JointWithoutValue {
  kind: 'none';
  /** The code of the protocol. */
  code: string;
  /** The code in plain words, fit to stand where the value would: "not readable: hips turned". */
  reason: string;
}

export interface StudyOnPaper {
  /** As heading: "Hips, laxity", "Hips, extended view", "Elbows". */
  title: string;
  protocol: string;
  protocolVersion: string;
  /** Version of grading criteria where the protocol names one: "criteria of 2022". */
  criteria: string | null;
  centre: string;
  /** Name or number of the reader. */
  reader: string;
  readOn: LocalDate;
  imagedOn: LocalDate;
  /** One or two short sentences on what the value means, from the protocol. */
  meaning: string;
  joints: JointOnPaper[];
  /** What the joints say of the dog: "0.44, the looser hip speaks for the dog", "at least grade B, one hip could not be read". */
  dogResult: string;
  /** The reader's own remark in plain words, or null. */
  comment: string | null;
  /** The dog was examined by this protocol before: when, and joint by joint whether the change is more than the reading's error. */
  earlier?: { readOn: LocalDate; changes: string[] };
  /** In a letter: where the dog stands among its breed, or why it is not set beside others. */
  standing?: Standing;
  /** Views that the protocol asks for and that were not taken, each with the reason in plain words. */
  viewsMissing: { view: string; reason: string }[];
}

// ---------------------------------------------------------------- letter

export type LetterSnapshot = ResultLetter | AmendedLetter | CorrectionLetter | FilmsRejectedLetter;

interface AnyLetter extends Sheet {
  orderNumber: string;
  addressee: { name: string; lines: string[] };
  dog: DogOnPaper;
  visit: {
    date: LocalDate;
    /** Where the pictures were taken: "our practice in Dellin", or the receiving practice by name. */
    place: string;
    /** Who ordered: "You asked us for them." or "Your practice in Karsby asked us for them." */
    askedBy: string;
    rest: 'sedation' | 'anaesthesia' | 'none';
    exposures: number;
    /** Every film taken went to the centre. */
    allSent: boolean;
    goingHomeSheet: boolean;
  };
  /** The person who answers questions about this letter. */
  contact: PersonOnPaper & { phone: string; hours: string; outOfHours: string };
  /** One sentence each: what to do next, per study where they differ. */
  nextSteps: string[];
  whoSees: {
    /** Besides the owner, the practice and the centre: "the practice in Karsby that asked for the pictures". */
    others: string[];
    statistics: { answer: 'yes' | 'no' | 'withdrawn'; on: LocalDate } | null;
  };
}

/** A result, from the reading centre to the owner. */
export interface ResultLetter extends AnyLetter, ResultOfStudies {
  kind: 'result';
}

/** A result that replaces an earlier one of the same dog. */
export interface AmendedLetter extends AnyLetter, ResultOfStudies {
  kind: 'amended';
  replaces: {
    letterOf: LocalDate;
    /** What changed and why, in the owner's words, short sentences. */
    why: string;
    /** Serial of the certificate that no longer stands, or null. */
    serial: string | null;
  };
}

interface ResultOfStudies {
  studies: StudyOnPaper[];
  /** Studies of the same order still on the road, each with a sentence: "The right elbow lay turned. It needs a new picture." */
  stillOut: { title: string; words: string }[];
  disagree: {
    /** How, in short sentences: "Another reader sees the same pictures and not the first number." */
    how: string;
    until: LocalDate | null;
    /** With currency: "58.00 marks". */
    cost: string | null;
  };
  /** The certificate's serial and the address that shows its facts, without scheme: "weirside.example/check". */
  check: { serial: string; address: string };
}

/** An earlier letter said something that does not hold for this dog. Names no other dog, owner or person. */
export interface CorrectionLetter extends AnyLetter {
  kind: 'correction';
  corrects: {
    letterOf: LocalDate;
    /** What the earlier letter said wrongly: "It gave a number that does not belong to Brannoch." */
    wrong: string;
    /** What holds now: "Brannoch has no result yet." */
    holds: string;
    /** Serial of the certificate that no longer stands, or null. */
    serial: string | null;
  };
  check: { serial: string; address: string } | null;
}

/** The centre could not use films. Nobody is blamed. */
export interface FilmsRejectedLetter extends AnyLetter {
  kind: 'films-rejected';
  rejected: {
    centre: string;
    on: LocalDate;
    studies: { title: string; reasons: string[] }[];
  };
  /** What a new visit costs, in words: "You pay nothing for the new pictures." */
  cost: string;
}

// ---------------------------------------------------------------- certificate

export interface CertificateSnapshot extends Sheet {
  /** Who may certify decides the title: an issuer's own certificate, or a statement that leaves the original alone. */
  title:
    | { as: 'certificate'; issuer: string; scheme: string; delegatedUntil: LocalDate | null }
    | { as: 'statement'; issuerOfOriginal: string | null; originalAttached: boolean };
  dog: DogOnPaper;
  /** Who read the transponder at imaging, and where; null where the dog has none, `identifiedBy` then says how. */
  transponderReadBy: { name: string; place: string } | null;
  /** How the dog was known without a transponder: "tattoo KB 114, by S. Adler"; null where it was read. */
  identifiedBy: string | null;
  imagedOn: LocalDate;
  rest: 'sedation' | 'anaesthesia' | 'none';
  /** As the owner states: "none, as the owner states". */
  earlierOperation: string;
  studies: StudyOnPaper[];
  /** "The centre's reader 14", signed for the centre on. */
  signed: { by: string; on: LocalDate };
  serial: string;
  /** Address without scheme, as printed: "weirside.example/check". */
  checkAddress: string;
  /** Text of the QR code: see `codeText` in check-code.ts. */
  code: string;
  /** The printed facts in the other languages, line by line, for a reader of the check page who has not the paper's. Older papers have none. */
  alsoIn?: Partial<Record<Language, PrintedFacts>>;
}

// ---------------------------------------------------------------- going home

export interface GoingHomeSnapshot extends Sheet {
  dog: DogOnPaper;
  date: LocalDate;
  sleep: {
    rest: 'sedation' | 'anaesthesia';
    from: Moment;
    until: Moment;
    /** Whether a second medicine ended it. */
    reversed: boolean;
    /** When the recovery signs were signed. */
    recoveredAt: Moment;
  };
  /** "His pictures are done." or why some are not. */
  pictures: string;
  /**
   * The practice's own words, approved by a vet. Light markup: blank line between paragraphs, "- " for a list,
   * **bold**. Never a dose.
   */
  text: {
    normal: string;
    whatToDo: string;
    callAtOnce: string;
    version: string;
    approvedBy: PersonOnPaper;
    approvedOn: LocalDate;
    /** The language that the practice wrote it in, where it is not the sheet's. */
    lang?: Language;
  };
  /** The number that answers now. */
  call: { phone: string; when: string };
  /** When the result may come: "What the pictures show comes by letter, in about three weeks." */
  resultWhen: string;
  explainedBy: PersonOnPaper;
  explainedTo: PersonOnPaper;
  /** Null: the line is left open for the hand. */
  explainedAt: Moment | null;
}

// ---------------------------------------------------------------- day sheet

export const DAY_SHEET_STEPS = ['booked', 'consent', 'admitted', 'sedated', 'imaged', 'recovered', 'home'] as const;

export interface DaySheetSnapshot extends Sheet {
  date: LocalDate;
  printedBy: string;
  visits: DaySheetVisit[];
}

export interface DaySheetVisit {
  /** Local time as `10:30`. */
  time: string;
  dog: { callName: string; breed: string; transponder: string | null };
  owner: { name: string; phone: string };
  studies: string[];
  room: string;
  /** Operator, vet, nurse, by the name used in the practice. */
  staff: string[];
  /** One mark for each of DAY_SHEET_STEPS, in that order. `hold` opens the knot and breaks the line. */
  steps: ('done' | 'hold' | 'open')[];
  /** The first hold: `what` is printed bold ("Consent missing."), `how` after it ("Owner signs, before 10:30"). */
  waitsFor: { what: string; how: string } | null;
}

// ---------------------------------------------------------------- consent copy

export interface ConsentCopySnapshot extends Sheet {
  orderNumber: string;
  dog: DogOnPaper;
  signer: PersonOnPaper & {
    /** For an agent: what the authority is and since when; null for the owner. */
    authority: string | null;
  };
  explainedBy: PersonOnPaper | null;
  purposes: ConsentPurpose[];
  signature: {
    signedAt: Moment;
    /** "by link, after the code sent to 0470 33 07", "on the practice's tablet", "on paper, scanned". */
    how: string;
    /** Strokes of the drawn signature in a box of width by height; empty where none was drawn. */
    drawn: { width: number; height: number; strokes: [x: number, y: number][][] };
  };
}

export interface ConsentPurpose {
  /** "Sedation", "Sending every film taken", "Use in the breed's statistics". */
  title: string;
  /** The full text that was shown. */
  text: string;
  textVersion: string;
  answer: 'yes' | 'no';
  /** What can no longer be undone and from when; said beforehand. */
  cannotBeUndone: string;
  /** What was answered besides yes or no: ["Spending limit", "300.00 marks"], ["May collect", "Jon Morwen"]. */
  details: [label: string, value: string][];
  withdrawnAt: Moment | null;
}
