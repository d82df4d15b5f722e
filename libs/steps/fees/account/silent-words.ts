import { t } from '#libs/words/spoken';
import type { Work } from '../../record/work.js';

/** Why no bill is sent at present, in words; null when it may be. */
export function silentWords({ evaluation, facts }: Pick<Work, 'evaluation' | 'facts'>): string | null {
  if (!evaluation.order.silent) return null;
  return t('{which}. No bill is sent to this family until a vet lifts the silence.', { which: facts('dogDied').length > 0 ? t('The dog died') : t('The dog was harmed') });
}

const WAITS: Record<string, string> = {
  DEATH: 'Silenced, because the dog died: it waits until a vet lifts the silence.',
  HARM: 'Silenced, because the dog was harmed: it waits until a vet lifts the silence.',
  NIGHT: 'Waits for the morning.',
  RESTRICTED: 'Waits: the payer has asked that the data are kept and not used.',
  ADDRESSEE_TO_CONFIRM: 'Waits until the addressees are confirmed.',
};
const DROPPED: Record<string, string> = { ERASED: 'Not sent: the payer has been erased on request.', BY_POST: 'Not sent: the payer gets post. Print this page.' };

const known = (words: string | undefined): string | undefined => words && t.known(words);

/** What became of the mail of a statement. */
export function mailWords(mail: { state: string; detail: string | null }, silent: string | null): string {
  const { state, detail } = mail;
  if (state === 'waiting') return known(WAITS[detail?.replace('waits: ', '') ?? '']) ?? (silent ? t('Silenced: it waits until a vet lifts the silence.') : t('Waits to be sent.'));
  if (state === 'dropped') return known(DROPPED[detail ?? '']) ?? t('Not sent: it was stopped.');
  return ({ claimed: t('Being sent.'), delivered: t('Delivered.'), bounced: t('Came back. Look at the address.'), unknown: t('Unknown whether it left. Say on the order’s page whether it came.') } as Record<string, string>)[state] ?? state;
}
