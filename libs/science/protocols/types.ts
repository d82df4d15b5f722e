export type Side = 'left' | 'right';

export type ViewCode =
  | 'vdExtended'
  | 'vdCompression'
  | 'vdDistraction'
  | 'vdLoaded'
  | 'mlFlexedLeft'
  | 'mlFlexedRight'
  | 'ccLeft'
  | 'ccRight';

export type EquipmentKind = 'xray' | 'distractionDevice' | 'loadFrame';

/** Where a statement comes from. `citation` says "common practice, no source" or "our own choice, no source" where so. */
export interface Source {
  what: string;
  citation: string;
}

export interface View {
  code: ViewCode;
  /** For people: "Extended, from below". */
  label: string;
  /** For a narrow list: "Extended". */
  shortLabel: string;
  side: Side | 'both';
  /** A view that is not required is recommended; its absence is no hold. */
  required: boolean;
  /** What the radiographer looks at before accepting. */
  checklist: string[];
  device?: EquipmentKind;
  /** How the joint is loaded, where it is. */
  load?: string;
}

export interface NumberRule {
  kind: 'number';
  /** "distraction index" */
  name: string;
  /** Empty for a ratio. */
  unit: string;
  decimals: number;
  /** A value outside is refused: it cannot be meant. */
  min: number;
  max: number;
  rangeReason: string;
  /** A value above is possible, but a person is asked to look again. */
  askAbove?: { value: number; reason: string };
}

export interface GradeRule {
  kind: 'grade';
  name: string;
  /** From the least change to the most. The place in the list is the order, and no number to add up. */
  grades: { code: string; words: string }[];
  /** Findings that together say why a grade is what it is: a person is asked when all are given and none comes up to it. */
  shownBy?: string[];
}

export type ValueRule = NumberRule | GradeRule;

/** Something recorded beside a joint's value. */
export type Finding = {
  code: string;
  label: string;
  words: string;
  /** Must be given when the joint has a value. */
  requiredWithValue?: boolean;
  /** Both joints of one dog must carry the same. */
  sameOnBothSides?: boolean;
  /** A joint with this finding keeps its value and stays out of every standing. */
  keepsOutOfStandings?: boolean;
  /** Can be there only beside one of these answers to another finding. */
  onlyWith?: { finding: string; answers: string[] };
} & (
  | { kind: 'yesNo' }
  /** A lower grade than `gradeAtLeast` is refused where the published scheme binds the two, and asked about where schemes differ. */
  | { kind: 'choice'; choices: { code: string; words: string; gradeAtLeast?: string }[]; bindsGrade?: boolean }
  | { kind: 'number'; unit: string; decimals: number; min: number; max: number }
);

/** Why a joint has no value. */
export interface NoValueReason {
  code: string;
  /** For the owner, as the end of "could not be read: …". */
  words: string;
  /** Days to wait before the joint may be X-rayed again, where a wait helps. */
  waitDays?: number;
}

/** Exactly one of the two. */
export type Youngest = { days: number } | { months: number };

/** Breeds that must be older, by name or code as the register writes them (case and spacing do not matter). */
export interface AgeException {
  breeds: string[];
  youngest: Youngest;
  source: string;
}

export type Repeatability =
  | {
      known: true;
      /** Standard deviation between dogs, in the value's unit. */
      sd: number;
      /** Intraclass correlation of repeated examinations, 0 to 1. */
      icc: number;
      /** How many dogs or joints the correlation rests on. */
      n: number;
      words: string;
      citation: string;
    }
  | { known: false; reason: string };

/** One examination for one centre, in one version. A study keeps the version it was imaged under, so a shipped row is never edited. */
export interface Protocol {
  code: string;
  version: string;
  /** What is different from the version before, for the person who has to see it. */
  changes: string;
  /** Not an examination of the trade: shipped to show that nothing is tied to one. */
  invented: boolean;
  name: string;
  deskName: string;
  region: 'hip' | 'elbow';
  views: View[];
  joints: Side[];
  value: ValueRule;
  findings: Finding[];
  noValue: NoValueReason[];
  /** The dog's result: always from the worse joint, never a sum. */
  dog: {
    worse: 'higher';
    /** "the looser hip" */
    worseWords: string;
    /** What one readable joint says about the dog. */
    oneJoint: 'atLeast' | 'incomplete';
  };
  youngest: Youngest;
  olderBreeds: AgeException[];
  /** The same examination of the same dog is not offered sooner after an accepted result; a veterinarian may give a reason. */
  repeatAfterDays: number;
  needsAccreditation: boolean;
  equipment: EquipmentKind[];
  consentText: string;
  /** Who may print "certificate"; otherwise the paper is a statement of a screening result. */
  issuer: { practiceMayCertify: boolean; words: string };
  repeatability: Repeatability;
  statistics: { counts: 'firstAccepted'; words: string };
  sources: Source[];
}

/** What a reader found in one joint: a value or a reason why there is none. */
export interface JointReading {
  joint: Side;
  value?: number | string;
  reason?: string;
  findings?: Record<string, boolean | string | number>;
}
