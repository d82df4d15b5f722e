import { NotYetError, PermanentError } from './job-errors.js';

export interface Tried {
  /** 1 for the first attempt. */
  attempt: number;
  attempts: number;
  postponed: number;
  postponeAtMost: number;
}

export type Fate = { kind: 'retry' } | { kind: 'postpone'; until: Date } | { kind: 'give up'; reason: Error };

/** What becomes of a job whose handler threw. */
export function fateOf(error: unknown, tried: Tried): Fate {
  const reason = error instanceof Error ? error : new Error(String(error));
  if (reason instanceof NotYetError) {
    if (tried.postponed < tried.postponeAtMost) return { kind: 'postpone', until: reason.until };
    return { kind: 'give up', reason: new PermanentError(`Put off ${tried.postponed} times, the last time because: ${reason.message}`, { cause: reason }) };
  }
  if (reason instanceof PermanentError || tried.attempt >= tried.attempts) return { kind: 'give up', reason };
  return { kind: 'retry' };
}
