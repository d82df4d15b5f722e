import type { PackageRow } from '#libs/contracts/screens/reader';
import { longDay, shortDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

export const isOpen = (row: PackageRow) => row.state === 'new' || row.state === 'acknowledged';

const endWords: Partial<Record<PackageRow['state'], PageSentence>> = { read: 'signed', rejected: 'sent back' };

export function dueWords(row: PackageRow, how: 'short' | 'long' = 'short'): string {
  const ended = endWords[row.state];
  if (ended) return t(ended);
  if (row.dueDay === null) return t('no day set');
  const day = (how === 'short' ? shortDay : longDay)(row.dueDay);
  return row.overdue ? t('overdue since {day}', { day }) : t('due {day}', { day });
}
