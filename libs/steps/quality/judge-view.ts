import { useCase } from '../record/use-case.js';
import { badInput } from '../record/step-error.js';

export const judgeView = useCase('judgeView', (_work, on, input) => {
  if (input.verdict === 'retake' && input.reasons.length === 0) throw badInput('reasons', 'Say why the view is to be taken again.');
  return [{ type: 'verdictGiven', exposure: input.exposure, study: on, verdict: input.verdict, reasons: input.reasons }];
});
