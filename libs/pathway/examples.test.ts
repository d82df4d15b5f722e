import type { Evaluation, Hold, Standing } from './evaluation.js';
import { evaluate } from './evaluate.js';
import { type Example, readExamples } from './examples/read.js';

const { examples, rules } = readExamples();

describe('an order stands where its facts say', () => {
  it.each(examples)('$name', ({ facts, now, expect: expected }) => {
    expect(inShort(evaluate(facts, now, rules), expected)).toEqual(expected);
  });

  it('leaves plain data behind', () => {
    for (const { facts, now } of examples) {
      const found = evaluate(facts, now, rules);
      expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    }
  });
});

/** Keeps what the examples speak of: steps, codes and days of holds, actions. */
function inShort(found: Evaluation, expected: Example['expect']): object {
  return {
    order: like(found.order, expected.order),
    visits: map(found.visits, (visit, id) => like(visit, expected.visits[id] ?? {})),
    studies: map(found.studies, (study, id) => like(study, expected.studies[id] ?? {})),
  };
}

function like(standing: Standing<string>, expected: object): object {
  const fields = standing as unknown as Record<string, unknown>;
  const always = ['step', 'holds', 'next', 'refused', 'chase'];
  const kept = [...new Set([...always, ...Object.keys(expected)])].filter((key) => fields[key] !== undefined);
  return Object.fromEntries(kept.map((key) => [key, key === 'holds' ? standing.holds.map(hold) : fields[key]]));
}

const hold = ({ code, by, until }: Hold): object => ({ code, ...(by ? { by } : {}), ...(until ? { until } : {}) });

const map = <T>(all: Record<string, T>, change: (one: T, id: string) => object): object =>
  Object.fromEntries(Object.entries(all).map(([id, one]) => [id, change(one, id)]));
