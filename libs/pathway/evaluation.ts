import type { Action } from './actions.js';
import type { Cause, ClockName, FactType, Role } from './facts.js';
import type { HoldCode } from './hold-codes.js';
import type { OrderStep, StudyStep, VisitStep } from './steps.js';

export interface On { scope: 'order' | 'visit' | 'study'; id: string }

/** What is missing, who can supply it, by when, what it forbids and what ends it. */
export interface Hold {
  code: HoldCode;
  on: On;
  who: Role[];
  /** Wanted by then: a local day, or an instant for minutes. */
  by?: string;
  /** Time itself ends it then. */
  until?: string;
  detail?: HoldDetail;
  forbids: (Action | Grant)[];
  ways: Action[];
}

/** A word in `forbids` that is a right, not a button. */
export type Grant = 'showBuyer';

export interface HoldDetail {
  questions?: string[];
  studies?: string[];
  views?: string[];
  problems?: string[];
  /** What a consent lacks. */
  lacks?: string;
  /** The owners whose word it still needs, where each gives one. */
  owners?: string[];
  exposures?: string[];
  results?: string[];
  people?: string[];
  to?: string;
  centre?: string;
  outcome?: string;
  cause?: Cause;
  earliestDate?: string;
  daysShort?: number;
  minutes?: number;
  version?: string;
}

export interface Standing<Step> {
  step: Step;
  why?: string;
  /** When the step was reached, ISO in UTC. */
  since: string | null;
  holds: Hold[];
  /** Offered and allowed. */
  next: Action[];
  /** Offered, and refused by these holds. */
  refused: Partial<Record<Action, HoldCode[]>>;
}

export interface OrderStanding extends Standing<OrderStep> {
  id: string;
  /** Of the order, its visits and its studies; unique, in alphabetical order. */
  allHolds: HoldCode[];
  /** Nothing leaves for the owner until a vet says so. */
  silent: boolean;
  frozen: boolean;
  legalHold: boolean;
  imagedNotSent: string[];
  statistics: boolean;
  ignored: Ignored[];
  /** Facts that happened before the record was frozen and were written down after it. */
  late: string[];
}

export interface VisitStanding extends Standing<VisitStep> {
  id: string;
  day?: string;
  start?: string;
  where?: string;
  room?: string;
  /** Studies listed and not left out. */
  studies: string[];
}

export interface StudyStanding extends Standing<StudyStep> {
  id: string;
  protocol: string;
  version: string;
  centre: string;
  /** Views still to be taken. */
  missing: string[];
  chase?: Chase;
}

export interface Chase {
  clock: ClockName;
  since: string;
  dueDay: string;
  sent: number;
  nextDay: string;
  act: 'none' | 'remind' | 'escalate' | 'withPerson';
  cause?: Cause;
  person?: string;
}

export interface Ignored {
  fact: string;
  type: FactType;
  reason: 'NO_ORDER' | 'NO_SUBJECT' | 'FINAL_FACT' | 'NOT_OLDER' | 'LEGAL_HOLD' | 'SECOND_PERSON' | 'NOT_AGREED' | 'UNKNOWN_TYPE';
}

export interface Evaluation {
  order: OrderStanding;
  visits: Record<string, VisitStanding>;
  studies: Record<string, StudyStanding>;
}
