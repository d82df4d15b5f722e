import { readingKey } from '#libs/science/protocols/same-reading';
import { useCase } from '../record/use-case.js';
import { checkJoints, protocolOf } from './check-joints.js';
import { valuesHash } from './enter-result.js';

/** Keyed from the scan without seeing what the other person keyed; only the two hashes are compared. */
export const keyResult = useCase('keyResult', (work, on, input) => {
  const protocol = protocolOf(work, on);
  const { joints } = checkJoints(protocol, input.joints);
  return [{ type: 'resultKeyed', study: on, result: input.result, valuesHash: valuesHash(readingKey(protocol, joints)) }];
});
