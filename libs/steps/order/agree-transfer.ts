import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { partyOf } from './transfer-parties.js';

/** Each side says yes for itself: by its own link, or to the desk. */
export const agreeTransfer = useCase('agreeTransfer', (work, _on, input) => {
  if (work.actor.roles[0] === 'owner' && partyOf(work, work.actor.id)?.party !== input.party) throw badInput('party', t('Each side says yes for itself.'));
  return [{ type: 'transferAgreed', party: input.party }];
});
