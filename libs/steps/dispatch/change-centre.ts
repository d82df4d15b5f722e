import { t } from '#libs/words/spoken';
import { closureFacts } from '../centre/closure-facts.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { endSendings } from './delivery.js';
import { withdrawSent } from './withdraw-sent.js';

/**
 * The sealed package can go to the new centre; the owner's yes named the old one and is asked again. What is still on its way to the old one stays
 * here, and an archive that has films is told that they are not to be read there.
 */
export const changeCentre = useCase('changeCentre', async (work, on, input) => {
  const { centre: before, protocol } = work.evaluation.studies[on]!;
  const centre = work.order.centres[input.centre];
  if (!centre?.protocols.includes(protocol)) throw badInput('centre', t('This centre does not read this study. Choose another centre.'));
  if (input.centre === before) throw badInput('centre', t('This study goes to this centre already. Choose another centre.'));
  await endSendings(work, on, before);
  await withdrawSent(work, { study: on, centre: before }, { why: 'expired', words: 'These films are read by another centre, and are not to be read here.' });
  return [{ type: 'centreChanged', study: on, centre: input.centre, detail: { name: centre.name } }, ...(await closureFacts(work, input.centre))];
});
