import { t } from '../words/t.js';
import { buttonClass } from './Button.js';
import { Download } from './Download.js';

/** The whole list behind a page of it, as the server has it. */
export const CsvLink = ({ path, children }: { path: string; children?: string }) => (
  <Download path={path} className={buttonClass()}>
    {children ?? t('Fetch as a file for a spreadsheet')}
  </Download>
);
