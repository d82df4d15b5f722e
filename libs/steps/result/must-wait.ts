import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import type { Work } from '../record/work.js';

/** A reading that was replaced, settled away, refused or accepted before is not brought back: nobody picks the better one. */
export function mustWait({ evaluation }: Work, study: string, result: string): void {
  const waiting = evaluation.studies[study]?.holds.find((h) => h.code === 'RESULT_TO_CHECK')?.detail?.results ?? [];
  if (!waiting.includes(result)) throw badInput('result', t('This reading does not wait for anybody: it was decided on or replaced before.'));
}
