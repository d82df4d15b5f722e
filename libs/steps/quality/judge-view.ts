import { t } from '#libs/words/spoken';
import { filmOf, servedBy } from '../imaging/film-of.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

export const judgeView = useCase('judgeView', (work, on, input) => {
  const film = filmOf(work, input.exposure);
  if (!servedBy(work, film.exposure).includes(on)) throw badInput('exposure', t('This film does not serve this study. Assign it first, or choose another one.'));
  if (input.verdict === 'retake' && input.reasons.length === 0) throw badInput('reasons', t('Say why the view is to be taken again.'));
  return [{ type: 'verdictGiven', exposure: film.exposure, study: on, verdict: input.verdict, reasons: input.reasons }];
});
