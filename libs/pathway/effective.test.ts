import { effective } from './effective.js';
import { evaluate } from './evaluate.js';
import { readExamples } from './examples/read.js';
import type { Fact, FactOf } from './facts.js';

const { named, rules } = readExamples();
const scanned = (id: string, minute: number, more: Partial<FactOf<'identityScanned'>> = {}): Fact => ({
  id, type: 'identityScanned', at: `2026-11-25T08:${minute}:00.000Z`, rec: `2026-11-25T08:${minute}:00.000Z`, by: 'n', role: 'nurse',
  practice: 'p', visit: 'v', place: 'table', numbers: [], ...more,
});
const strike = (id: string, fact: string, minute: number): Fact => ({
  id, type: 'factStruck', at: `2026-11-25T08:${minute}:00.000Z`, rec: `2026-11-25T08:${minute}:00.000Z`, by: 'n', role: 'nurse', practice: 'p', fact, why: 'x',
});
const ids = (facts: Fact[]): string[] => effective(facts).facts.filter((fact) => fact.type !== 'factStruck').map((fact) => fact.id);

describe('facts that count', () => {
  it('let a correction replace the older fact whole', () => {
    expect(ids([scanned('a', 10), scanned('b', 20, { corrects: 'a' })])).toEqual(['b']);
  });

  it('keep a target replaced even when its corrector is struck', () => {
    expect(ids([scanned('a', 10), scanned('b', 20, { corrects: 'a' }), strike('c', 'b', 30)])).toEqual([]);
  });

  it('cannot be removed by an older fact, nor in a circle', () => {
    const facts = [scanned('a', 10, { corrects: 'b' }), scanned('b', 20, { corrects: 'a' })];
    expect(ids(facts)).toEqual(['b']);
    expect(effective(facts).ignored).toEqual([{ fact: 'a', type: 'identityScanned', reason: 'NOT_OLDER' }]);
  });

  it('take two entries with one key for one, whichever came first', () => {
    const reading = (id: string): Fact => ({
      id, type: 'readingTaken', at: '2026-11-25T08:10:00.000Z', rec: '2026-11-25T08:10:00.000Z', by: 'n', role: 'nurse', practice: 'p',
      visit: 'v', device: 'm', n: 1,
    });
    expect(ids([reading('b'), reading('a')])).toEqual(['a']);
  });

  it('read instants alike, however they are written', () => {
    const late = scanned('late', 20, { at: '2026-11-25T10:20:00+02:00' });
    expect(ids([late, scanned('early', 10)])).toEqual(['early', 'late']);
  });

  it('list an attempt to strike what is final', () => {
    const { facts, now } = named('sealed, not sent');
    const sealed = facts.find((fact) => fact.type === 'packageSealed');
    const found = evaluate([...facts, strike('zz', sealed?.id ?? '', 59)], now, rules);
    expect(found.order.ignored).toEqual([{ fact: 'zz', type: 'factStruck', reason: 'FINAL_FACT' }]);
    expect(found.studies.s1?.step).toBe('sealed');
  });
});
