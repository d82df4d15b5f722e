import { csv } from '#libs/contracts/csv';
import { t } from '../words/t.js';
import { Button } from './Button.js';
import { keepFile } from './keep-file.js';

/** A list that the page has whole, as a file for a spreadsheet. */
export function CsvButton({ name, head, rows, of }: { name: string; head: string[]; rows: (string | number | null)[][]; of: string }) {
  return <Button aria-label={t('{list}: fetch as a file for a spreadsheet', { list: of })} onPress={() => keepFile(new Blob([csv(head, rows)], { type: 'text/csv;charset=utf-8' }), name)}>{t('Fetch as a file for a spreadsheet')}</Button>;
}
