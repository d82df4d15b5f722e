import fc from 'fast-check';
import { decide } from './decide.js';
import { evaluate } from './evaluate.js';
import { readExamples } from './examples/read.js';
import { Chooser } from './examples/chooser.js';
import { endless, misjudged, stuck, things } from './examples/invariants.js';
import { fact, factTypes, randomPayload } from './examples/random-fact.js';
import { walk } from './examples/walk.js';
import type { Fact } from './facts.js';
import { maySend, type MessageKind } from './silence.js';
import { thread } from './thread.js';
import { wakeAt } from './wake-at.js';

const { rules } = readExamples();
const START = Date.parse('2026-11-25T08:00:00.000Z');
const minute = (n: number): string => new Date(START + n * 60_000).toISOString();

const randomFact = fc.record({
  type: fc.constantFrom(...factTypes), seed: fc.nat(), id: fc.nat(40), at: fc.nat(60), late: fc.nat(60), corrects: fc.option(fc.nat(40), { freq: 8 }),
}).map(({ type, seed, id, at, late, corrects }): Fact => {
  const made = fact(type, randomPayload[type](new Chooser(seed)), { id: `f${id}-${seed}`, at: minute(at), rec: minute(at + late), by: seed % 2 ? 'a' : 'b' });
  return corrects === null ? made : { ...made, corrects: `f${corrects}` };
});
/** Things first, so that most of what follows has a subject. */
const ground: Fact[] = (['orderOpened', 'studyAdded', 'studyAdded', 'visitOpened', 'visitOpened', 'exposureTaken', 'packageSealed', 'packageSent'] as const)
  .map((type, n) => fact(type, randomPayload[type](new Chooser(n * 7 + 1)), { id: `g${n}`, at: minute(-9 + n) }));

/** Facts in any mixture: part of an ordinary walk, and anything at all strewn over it. */
const anyFacts = fc.record({
  grounded: fc.boolean(), seed: fc.nat(), strides: fc.nat(60), holes: fc.nat(6), strewn: fc.array(randomFact, { maxLength: 25 }),
}).map(({ grounded, seed, strides, holes, strewn }) => {
  const walked = walk(new Chooser(seed), strides, rules).at(-1)?.after.facts ?? [];
  const kept = walked.filter((_, n) => holes === 0 || n % (holes + 3) !== 0);
  return [...(grounded ? ground : []), ...kept, ...strewn];
});
const anyTime = fc.integer({ min: -1_000, max: 80_000 }).map(minute);

const steps = (facts: readonly Fact[], now: string): string[] =>
  things(evaluate(facts, now, rules)).map((thing) => `${thing.id} ${thing.step} ${thing.since}`);

describe('whatever the facts', () => {
  it('never throws, and leaves plain data', () => {
    fc.assert(fc.property(anyFacts, anyTime, (facts, now) => {
      const found = evaluate(facts, now, rules);
      expect(JSON.parse(JSON.stringify(found))).toEqual(found);
      expect(() => thread(facts, found, rules)).not.toThrow();
    }), { numRuns: 80 });
  });

  it('does not depend on the order of arrival, nor on facts that come twice', () => {
    fc.assert(fc.property(anyFacts, anyTime, fc.nat(), (facts, now, seed) => {
      const c = new Chooser(seed);
      const again = [...facts, ...facts.filter(() => c.below(3) === 0)]
        .map((one) => ({ one, key: c.below(1_000_000) })).sort((a, b) => a.key - b.key).map(({ one }) => one);
      const found = evaluate(again, now, rules);
      expect(found).toEqual(evaluate(facts, now, rules));
    }), { numRuns: 100 });
  });

  it('moves no step by time alone', () => {
    fc.assert(fc.property(anyFacts, anyTime, anyTime, (facts, now, later) => {
      expect(steps(facts, later)).toEqual(steps(facts, now));
    }), { numRuns: 80 });
  });

  it('allows exactly what no hold forbids', () => {
    fc.assert(fc.property(anyFacts, anyTime, (facts, now) => {
      expect(misjudged(evaluate(facts, now, rules))).toEqual([]);
    }), { numRuns: 80 });
  });

  it('refuses what holds forbid, and says which holds', () => {
    fc.assert(fc.property(anyFacts, anyTime, (facts, now) => {
      const found = evaluate(facts, now, rules);
      for (const { scope, id, refused } of things(found)) {
        for (const [action, because] of Object.entries(refused)) {
          const decision = decide(found, action as keyof typeof refused, { scope, id }, 'queue');
          expect(decision.allowed).toBe(false);
          if (!decision.allowed) expect(decision.because).toEqual(expect.arrayContaining(because));
        }
      }
    }), { numRuns: 100 });
  });

  it('leaves no open visit or study without something to do, or a day to wait for', () => {
    fc.assert(fc.property(anyFacts, anyTime, (facts, now) => {
      expect(stuck(evaluate(facts, now, rules))).toEqual([]);
    }), { numRuns: 200 });
  });

  it('gives every hold a way out', () => {
    fc.assert(fc.property(anyFacts, anyTime, (facts, now) => {
      expect(endless(evaluate(facts, now, rules))).toEqual([]);
    }), { numRuns: 200 });
  });

  it('wakes before anything changes by time', () => {
    fc.assert(fc.property(anyFacts, anyTime, fc.integer({ min: 1, max: 20 * 1_440 }), (facts, now, minutes) => {
      const wake = wakeAt(facts, now, rules);
      const later = new Date(Date.parse(now) + minutes * 60_000).toISOString();
      const seen = wake === null || later < wake ? later : new Date(Date.parse(wake) - 1).toISOString();
      const shape = (at: string): string[] => things(evaluate(facts, at, rules)).map((thing) =>
        JSON.stringify([thing.id, thing.holds.map((hold) => hold.code), thing.next, 'chase' in thing ? thing.chase : null]));
      expect(shape(seen)).toEqual(shape(now));
    }), { numRuns: 100 });
  });

  it('sends an owner nothing but the going-home sheet while harm is unanswered', () => {
    const kinds: MessageKind[] = ['result', 'correction', 'bill', 'reminder', 'confirmation', 'survey', 'consentLink'];
    const harm = fact('harmRecorded', { what: 'x' }, { id: 'harm', at: minute(90_000) });
    fc.assert(fc.property(anyFacts, anyTime, fc.constantFrom(...kinds), (facts, now, kind) => {
      const said = [...ground, ...facts, harm];
      expect(maySend({ kind, to: 'owner', visit: 'v1', study: 's1' }, said, now, rules)).toMatchObject({ send: false });
    }), { numRuns: 50 });
  });
});
