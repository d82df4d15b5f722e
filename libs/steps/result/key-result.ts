import { readingKey } from '#libs/science/protocols/same-reading';
import { t } from '#libs/words/spoken';
import { readRoomMarks, roomAnswer } from '../quality/room-marks.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Stated } from '../record/work.js';
import { checkJoints, protocolOf } from './check-joints.js';
import { doubts, valuesHash } from './enter-result.js';
import { keyings } from './joints-of.js';

/** Keyed from the scan without seeing what the other person keyed; the page shows values once two people have keyed the same. */
export const keyResult = useCase('keyResult', async (work, on, input) => {
  const { facts, actor } = work;
  const arrived = facts('resultArrived').find((f) => f.study === on && f.result === input.result);
  if (arrived?.channel !== 'post') throw badInput('result', t('Only a result that came by post is keyed from its scan.'));
  if (keyings(facts, arrived).some((f) => f.by === actor.id)) throw badInput('result', t('You have keyed this sheet already. Another person keys it now.'));
  const protocol = protocolOf(work, on);
  const { joints, ask } = checkJoints(protocol, input.joints);
  const asked = [...ask.map((p) => p.told), ...doubts(roomAnswer(work, on, protocol, joints, await readRoomMarks(work)))];
  const stated: Stated[] = [{ type: 'resultKeyed', study: on, result: input.result, valuesHash: valuesHash(readingKey(protocol, joints)), detail: { joints, ask: asked } }];
  const known = facts('resultChecked').filter((f) => f.result === input.result).at(-1)?.problems ?? [];
  if (asked.length > 0 && !known.includes('RANGE')) stated.push({ type: 'resultChecked', study: on, result: input.result, problems: [...known, 'RANGE'] });
  return stated;
});
