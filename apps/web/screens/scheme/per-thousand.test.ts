import { perThousand } from './per-thousand.js';

it.each([[0, '0'], [0.00142641, '1.4'], [0.0378, '38'], [1, '1000']])('%d is written as %s of 1,000', (share, words) => expect(perThousand(share)).toBe(words));
