import { fateOf } from './job-fate.js';
import { NotYetError, PermanentError, RetryableError } from './job-errors.js';

const tried = { attempt: 1, attempts: 3, postponed: 0, postponeAtMost: 2 };

describe('what becomes of a job whose handler threw', () => {
  it.each([new RetryableError('busy'), new Error('who knows'), 'a string'])('%s: tried again while attempts are left', (error) => {
    expect(fateOf(error, tried)).toEqual({ kind: 'retry' });
    expect(fateOf(error, { ...tried, attempt: 3 })).toMatchObject({ kind: 'give up' });
  });

  it('a permanent error is given up at the first attempt', () => {
    const reason = new PermanentError('no such address');
    expect(fateOf(reason, tried)).toEqual({ kind: 'give up', reason });
  });

  it('too early is put off even at the last attempt, until the bound is reached', () => {
    const until = new Date('2026-05-04T08:00:00Z');
    const early = new NotYetError(until, 'the centre is closed');
    expect(fateOf(early, { ...tried, attempt: 3, postponed: 1 })).toEqual({ kind: 'postpone', until });
    expect(fateOf(early, { ...tried, postponed: 2 })).toMatchObject({ kind: 'give up', reason: { message: expect.stringContaining('the centre is closed') } });
  });
});
