import { useState } from 'react';
import type { NewBillLine } from '#libs/contracts/centre-bills';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { amount, money } from '../../design/format.js';
import { t } from '../../words/t.js';
import { usePreview } from './queries.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

const states = { matched: 'Fits', unmatched: 'Fits nothing', disputed: 'Disputed' } as const satisfies Record<string, PageSentence>;

/** Rows of a spreadsheet, looked at before anything is entered; a row that is wrong is named, with what to do. */
export function FromFile({ centre, onRows }: { centre: string | undefined; onRows: (lines: NewBillLine[], wrong: number) => void }) {
  const [csv, setCsv] = useState<string>();
  const [missing, setMissing] = useState<string>();
  const preview = usePreview();
  const write = (text: string | undefined) => {
    setCsv(text);
    if (text) return;
    // An emptied field is a file that was given up, with its rows and what was wrong with them.
    preview.reset();
    onRows([], 0);
  };
  const look = () => {
    const gap = !centre ? t('Choose the centre first.') : !csv ? t('Paste the rows, or choose the file.') : undefined;
    setMissing(gap);
    if (!gap) preview.mutate({ centre: centre!, csv: csv! }, { onSuccess: ({ rows, errors }) => onRows(rows.map(({ reference, study, amountMinor }) => ({ reference, study, amountMinor })), errors.length) });
  };
  return (
    <details className="wide from-file">
      <summary>{t('Lines from a file')}</summary>
      <TextField label={t('Rows of the file')} lines={5} value={csv} onChange={write} {...(missing && { error: missing })} help={t('The first row names the columns: reference, study, amount. An amount is written like 58.00.')} />
      <label className="field">
        <span className="label">{t('Or the file itself (CSV)')}</span>
        <input type="file" accept=".csv,text/csv,text/plain" onChange={(e) => void e.target.files?.[0]?.text().then(write)} />
      </label>
      <ErrorBar error={preview.error} />
      <div className="acts">
        <Button onPress={look}>{preview.isPending ? t('Looking …') : t('Look at these rows')}</Button>
      </div>
      {preview.data && (
        <div role="status">
          {preview.data.errors.length > 0 && (
            <div className="err">
              <b>{t('{count, plural, one {# row is} other {# rows are}} wrong. Nothing is entered until the file is right.', { count: preview.data.errors.length })}</b>
              <ul className="lines">
                {preview.data.errors.map((e) => (
                  <li key={e.row}>
                    {t('Row {row}: {words}', { row: e.row, words: e.words })}
                  </li>
                ))}
              </ul>
            </div>
          )}
          {preview.data.rows.length > 0 && (
            <>
              <p>
                {t('{count, plural, one {# row} other {# rows}}, {sum}. They stand below as lines of the bill.', { count: preview.data.rows.length, sum: money(preview.data.sumMinor, preview.data.currency) })}
              </p>
              <Table
                caption={t('Rows of the file')}
                rows={preview.data.rows}
                rowKey={(r) => String(r.row)}
                columns={[
                  { head: t('Row'), cell: (r) => <span className="num">{r.row}</span> },
                  { head: t('As the file has it'), rowHead: true, cell: (r) => <>{r.reference}<span className="block small">{r.study}</span></> },
                  { head: t('What it would be'), cell: (r) => <><b>{t(states[r.state])}.</b> {r.says}</> },
                  { head: t('Amount'), right: true, cell: (r) => amount(r.amountMinor) },
                ]}
              />
            </>
          )}
        </div>
      )}
    </details>
  );
}
