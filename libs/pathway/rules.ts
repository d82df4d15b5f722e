/** The frozen plain data that an order is judged by. */
export interface Rules {
  /** Whether every film taken must be sent, and so agreed to. */
  sendAll: boolean;
  /** By `code@version`. */
  protocols: Record<string, ProtocolRules>;
  centres: Record<string, CentreRules>;
  practices: Record<string, PracticeRules>;
}

export interface ProtocolRules {
  views: string[];
  /** For this dog: whoever makes the rules has looked its breed up already. */
  youngest: { days: number } | { months: number };
  consentText: string;
  certify: boolean;
}

export interface Calendar {
  zone: string;
  holidays: string[];
}

export interface CentreRules {
  calendar: Calendar;
  ackDays: number;
  resultDays: number;
  /** Working days between reminders. */
  remindEvery: number;
  /** How many reminders before a named person gets the task. */
  reminders: number;
  appealDays: number;
}

export interface PracticeRules {
  zone: string;
  letters: { mode: 'each' } | { mode: 'together'; days: number };
  sedationText: string;
  sendAllText: string;
  statisticsText: string;
  /** Local hours between which no letter, bill or reminder leaves. */
  quiet: { from: number; to: number };
  /** Days on which an owner reaches somebody; left out where that is not limited. */
  reachable?: Reachable;
}

export interface Reachable {
  /** 1 is Monday. */
  weekdays: number[];
  closed: string[];
}
