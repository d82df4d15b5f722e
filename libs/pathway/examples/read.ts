import { readFileSync } from 'node:fs';
import type { Fact } from '../facts.js';
import type { Rules } from '../rules.js';

export interface Example {
  name: string;
  now: string;
  facts: Fact[];
  expect: { order: object; visits: Record<string, object>; studies: Record<string, object> };
}

const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));

export function readExamples(): { examples: Example[]; rules: Rules; named: (name: string) => Example } {
  const examples = read('./examples.json') as Example[];
  return {
    examples,
    rules: read('./rules.json') as Rules,
    named: (name) => {
      const found = examples.find((example) => example.name === name);
      if (!found) throw new RangeError(`No example is called ${name}.`);
      return found;
    },
  };
}
