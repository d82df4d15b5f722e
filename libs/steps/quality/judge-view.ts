import { t } from '#libs/words/spoken';
import { withdrawSent } from '../dispatch/withdraw-sent.js';
import { filmOf, servedBy } from '../imaging/film-of.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** A film that an archive had with an earlier package of this study, and that is now to be taken again, is called back there. */
export const judgeView = useCase('judgeView', async (work, on, input) => {
  const film = filmOf(work, input.exposure);
  const { verdict, reasons } = input;
  if (!servedBy(work, film.exposure).includes(on)) throw badInput('exposure', t('This film does not serve this study. Assign it first, or choose another one.'));
  if (verdict === 'retake') {
    if (reasons.length === 0) throw badInput('reasons', t('Say why the view is to be taken again.'));
    await withdrawSent(work, { images: [film.image], study: on }, { why: 'quality', words: 'This film is to be taken again.', reasons });
  }
  return [{ type: 'verdictGiven', exposure: film.exposure, study: on, verdict, reasons }];
});
