import { evaluate } from './evaluate.js';
import { fact } from './examples/random-fact.js';
import { readExamples } from './examples/read.js';

const { named, rules } = readExamples();
const { facts, now } = named('on the day, everything agreed');
const visitHolds = (...more: ReturnType<typeof fact>[]) => {
  const { visits } = evaluate([...facts, ...more], now, rules);
  return Object.values(visits).flatMap((v) => v.holds);
};
const sold = fact('dogTransferred', { day: now.slice(0, 10), buyer: 'buyer' }, { id: 'sold', at: now });

test('a seller’s yes puts a dog to sleep no more once the dog is sold', () => {
  expect(visitHolds().map((h) => h.code)).not.toContain('CONSENT_SEDATION_MISSING');
  expect(visitHolds(sold)).toContainEqual(expect.objectContaining({ code: 'CONSENT_SEDATION_MISSING', detail: { lacks: 'sold' } }));
});
