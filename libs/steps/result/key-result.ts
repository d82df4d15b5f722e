import { readingKey } from '#libs/science/protocols/same-reading';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Stated } from '../record/work.js';
import { checkJoints, protocolOf } from './check-joints.js';
import { valuesHash } from './enter-result.js';
import { keyings } from './joints-of.js';

/** Keyed from the scan without seeing what the other person keyed; the page shows values once two people have keyed the same. */
export const keyResult = useCase('keyResult', ({ facts, actor, ...work }, on, input) => {
  const arrived = facts('resultArrived').find((f) => f.study === on && f.result === input.result);
  if (arrived?.channel !== 'post') throw badInput('result', 'Only a result that came by post is keyed from its scan.');
  if (keyings(facts, arrived).some((f) => f.by === actor.id)) throw badInput('result', 'You have keyed this sheet already. Another person keys it now.');
  const protocol = protocolOf({ facts, actor, ...work }, on);
  const { joints, ask } = checkJoints(protocol, input.joints);
  const stated: Stated[] = [{ type: 'resultKeyed', study: on, result: input.result, valuesHash: valuesHash(readingKey(protocol, joints)), detail: { joints, ask: ask.map((p) => p.words) } }];
  const known = facts('resultChecked').filter((f) => f.result === input.result).at(-1)?.problems ?? [];
  if (ask.length > 0 && !known.includes('RANGE')) stated.push({ type: 'resultChecked', study: on, result: input.result, problems: [...known, 'RANGE'] });
  return stated;
});
