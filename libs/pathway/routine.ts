import type { Hold } from './evaluation.js';
import type { HoldCode } from './hold-codes.js';

/** The next ordinary thing to do, or time passing: nobody is late, so the line does not break for it. */
const routine: ReadonlySet<HoldCode> = new Set<HoldCode>([
  'BEFORE_THE_DAY', 'NOT_SCANNED', 'ANSWERS_NOT_TODAY', 'NOT_EXAMINED', 'NOT_SCANNED_AT_TABLE', 'TOP_UP_NOT_SIGNED',
  'IMAGING_NOT_ENDED', 'RECOVERY_NOT_SIGNED', 'READING_DUE', 'NOT_SENT', 'TOO_YOUNG', 'CENTRE_CLOSED', 'LETTER_WAITS', 'LETTER_ON_ITS_WAY',
]);

export function isRoutine(hold: Hold, all: readonly Hold[]): boolean {
  // A plan is signed after the examination, and the sheet is given while the dog recovers.
  if (hold.code === 'PLAN_NOT_SIGNED') return all.some((other) => other.code === 'NOT_EXAMINED');
  if (hold.code === 'GOING_HOME_SHEET_MISSING') return all.some((other) => other.code === 'RECOVERY_NOT_SIGNED');
  return routine.has(hold.code);
}

export const firstWaitedFor = (holds: readonly Hold[]): Hold | null => holds.find((hold) => !isRoutine(hold, holds)) ?? null;
