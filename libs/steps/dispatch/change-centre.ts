import { t } from '#libs/words/spoken';
import { closureFacts } from '../centre/closure-facts.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** The sealed package can go to the new centre; the owner's yes named the old one and is asked again. */
export const changeCentre = useCase('changeCentre', async (work, on, input) => {
  const centre = work.order.centres[input.centre];
  if (!centre?.protocols.includes(work.evaluation.studies[on]!.protocol)) throw badInput('centre', t('This centre does not read this study. Choose another centre.'));
  return [{ type: 'centreChanged', study: on, centre: input.centre, detail: { name: centre.name } }, ...(await closureFacts(work, input.centre))];
});
