import { ScienceError } from '../error.js';
import type { MarkedPicture } from './check-marks.js';
import { evaluateMarks, type MarksEvaluation } from './evaluate-marks.js';

/**
 * The measurements of marks that may be kept.
 * @throws ScienceError with the code and the sentence of the first problem
 */
export function refuseMarks(marked: MarkedPicture): MarksEvaluation {
  const evaluation = evaluateMarks(marked);
  const [first] = evaluation.problems;
  if (first) throw new ScienceError(first.code, first.said);
  return evaluation;
}
