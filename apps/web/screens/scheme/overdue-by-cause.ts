import type { SchemeScreen } from '#libs/contracts/screens/board';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { t } from '../../words/t.js';

export type Overdue = SchemeScreen['overdue'][number];
export interface Cause { code: string; words: string; studies: Overdue[] }

const words: Record<string, PageSentence> = {
  unpaid: 'unpaid',
  bounced: 'mail came back',
  closed: 'centre closed',
  lost: 'lost on the way',
  noAnswer: 'without an answer',
};

/** Studies past their day, gathered by why; the cause that nobody has found out comes first, because somebody must ask. */
export function overdueByCause(overdue: Overdue[]): Cause[] {
  const codes = [...new Set(overdue.map((o) => o.cause ?? ''))];
  return codes
    .map((code) => ({
      code,
      words: code === '' ? t('for a cause not known yet') : words[code] ? t(words[code]) : code,
      studies: overdue.filter((o) => (o.cause ?? '') === code).sort((a, b) => a.dueDay.localeCompare(b.dueDay)),
    }))
    .sort((a, b) => Number(b.code === '') - Number(a.code === '') || b.studies.length - a.studies.length || a.words.localeCompare(b.words));
}
