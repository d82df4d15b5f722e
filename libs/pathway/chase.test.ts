import { evaluate } from './evaluate.js';
import { readExamples } from './examples/read.js';
import { fact } from './examples/random-fact.js';
import type { Fact } from './facts.js';
import { addWorkingDays, isWorkingDay } from './working-days.js';

const { named, rules } = readExamples();
const { facts } = named('never acknowledged: first reminder due');
const chase = (more: Fact[], now: string) => evaluate([...facts, ...more], now, rules).studies.s1?.chase;
const sent = (day: string): Fact => fact('chaseSent', { study: 's1', clock: 'ack', day, digest: 'g' }, { id: `c${day}`, at: `${day}T08:00:00.000Z` });

describe('working days', () => {
  const calendar = { zone: 'Europe/Vienna', holidays: ['2026-12-08'] };

  it('leave out weekends, holidays and closures that end', () => {
    expect(addWorkingDays('2026-12-04', 2, calendar)).toBe('2026-12-09');
    expect(addWorkingDays('2026-12-04', 1, calendar, [{ from: '2026-12-07', until: '2026-12-10' }])).toBe('2026-12-11');
    expect(isWorkingDay('2026-12-05', calendar)).toBe(false);
  });

  it('take no notice of a closure without an end, which moves no due day', () => {
    expect(addWorkingDays('2026-12-04', 1, calendar, [{ from: '2026-12-07' }])).toBe('2026-12-07');
  });
});

describe('the chase', () => {
  it('does nothing on the due day and reminds on the next working day', () => {
    expect(chase([], '2026-11-30T22:59:00.000Z')?.act).toBe('none');
    expect(chase([], '2026-11-30T23:00:00.000Z')?.act).toBe('remind');
  });

  it('asks a named person once the reminders are used up', () => {
    expect(chase([sent('2026-12-01'), sent('2026-12-04')], '2026-12-10T08:00:00.000Z')).toMatchObject({ sent: 2, nextDay: '2026-12-10', act: 'escalate' });
  });

  it('rests while a person has taken it, and comes back on the day they named', () => {
    const taken = fact('chaseTaken', { study: 's1', person: 'm', lookAgain: '2026-12-14' }, { id: 't', at: '2026-12-10T08:00:00.000Z' });
    const used = [sent('2026-12-01'), sent('2026-12-04'), taken];
    expect(chase(used, '2026-12-13T08:00:00.000Z')).toMatchObject({ act: 'withPerson', person: 'm' });
    expect(chase(used, '2026-12-14T08:00:00.000Z')?.act).toBe('escalate');
  });

  it('pauses what is done, not what is counted, while harm is unanswered', () => {
    const harm = fact('harmRecorded', { what: 'x' }, { id: 'h', at: '2026-12-01T07:00:00.000Z' });
    expect(chase([harm], '2026-12-01T08:00:00.000Z')).toMatchObject({ act: 'none', dueDay: '2026-11-30' });
  });

  it('asks a person at once when the centre has closed for good', () => {
    const closed = fact('centreClosed', { centre: 'centre-weir', from: '2026-11-26' }, { id: 'x', at: '2026-11-26T08:00:00.000Z' });
    expect(chase([closed], '2026-11-26T09:00:00.000Z')).toMatchObject({ act: 'escalate', dueDay: '2026-11-30' });
  });

  it('stops by itself when a result comes', () => {
    const result = fact('resultArrived', {
      study: 's1', result: 'r', ref: 'R', channel: 'page', reading: 'first', valuesHash: 'a', joints: [],
    }, { id: 'r', at: '2026-12-01T08:00:00.000Z' });
    expect(chase([result], '2026-12-01T09:00:00.000Z')).toBeUndefined();
  });
});
