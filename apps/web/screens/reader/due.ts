import type { PackageRow } from '#libs/contracts/screens/reader';
import { longDay, shortDay } from '../../design/format.js';

export const isOpen = (row: PackageRow) => row.state === 'new' || row.state === 'acknowledged';

const endWords: Partial<Record<PackageRow['state'], string>> = { read: 'signed', rejected: 'sent back' };

export function dueWords(row: PackageRow, how: 'short' | 'long' = 'short'): string {
  const ended = endWords[row.state];
  if (ended) return ended;
  if (row.dueDay === null) return 'no day set';
  const day = (how === 'short' ? shortDay : longDay)(row.dueDay);
  return row.overdue ? `overdue since ${day}` : `due ${day}`;
}
