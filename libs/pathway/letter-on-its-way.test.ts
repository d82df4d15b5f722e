import { evaluate } from './evaluate.js';
import { readExamples } from './examples/read.js';
import type { FactOf } from './facts.js';

const { named, rules } = readExamples();
const { facts, now } = named('letter outcome unknown');
const released = facts.findLast((f): f is FactOf<'letterReleased'> => f.type === 'letterReleased')!;
const unheard = facts.filter((f) => f.type !== 'letterOutcome');
const holds = (of: typeof facts, at = now) => evaluate(of, at, rules).studies[released.study]!.holds.filter((h) => h.code.startsWith('LETTER')).map(({ code, until }) => ({ code, ...(until && { until }) }));

describe('a letter of which nothing is known yet', () => {
  const day = released.at.slice(0, 10);
  const later = (days: number) => new Date(Date.parse(`${day}T12:00:00.000Z`) + days * 86_400_000).toISOString();

  it('is on its way, and troubles nobody', () => {
    expect(holds(unheard)).toEqual([{ code: 'LETTER_ON_ITS_WAY', until: later(7).slice(0, 10) }]);
  });

  it('is asked for when a week has passed', () => {
    expect(holds(unheard, later(6))).toEqual([{ code: 'LETTER_ON_ITS_WAY', until: later(7).slice(0, 10) }]);
    expect(holds(unheard, later(7))).toEqual([{ code: 'LETTER_NOT_DELIVERED' }]);
  });

  it('is asked for at once where the mail server has said something else than that it came', () => {
    expect(holds(facts)).toEqual([{ code: 'LETTER_NOT_DELIVERED' }]);
  });

  it('is asked for at once where it goes by post: no program can tell', () => {
    const byPost = unheard.map((f) => (f.type === 'orderOpened' || f.type === 'addresseesConfirmed' ? { ...f, addressees: f.addressees.map((a) => ({ ...a, channel: 'post' as const })) } : f));
    expect(holds(byPost)).toEqual([{ code: 'LETTER_NOT_DELIVERED' }]);
  });
});
