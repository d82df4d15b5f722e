import { useId, useState } from 'react';
import type { ResultsFile } from '#libs/contracts/results-in';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { Outcomes } from './Outcomes.js';
import { PreviewRows } from './PreviewRows.js';
import { fileContent } from './file-content.js';
import { usePreview, useTake } from './queries.js';

/** A file is looked at first, row by row; then its right rows are taken, or it is left. */
export function FileSheet({ centres, lead }: { centres: { id: string; name: string }[]; lead: boolean }) {
  const only = centres.length === 1 ? centres[0]!.id : undefined;
  const [centre, setCentre] = useState<string | undefined>(only);
  const [file, setFile] = useState<File>();
  const [looked, setLooked] = useState<ResultsFile>();
  const [missing, setMissing] = useState<{ centre?: string; file?: string }>({});
  const preview = usePreview(lead);
  const take = useTake(lead);
  const fileId = useId();
  const forget = () => {
    preview.reset();
    take.reset();
    setLooked(undefined);
  };
  const look = async () => {
    forget();
    const gaps = { ...(!centre && { centre: t('Choose the centre whose readings these are.') }), ...(!file && { file: t('Choose the file.') }) };
    setMissing(gaps);
    if (!centre || !file) return;
    const asked = { centre, name: file.name, content: await fileContent(file) };
    setLooked(asked);
    preview.mutate(asked);
  };
  const ready = preview.data?.rows.filter((r) => r.state === 'ready').length ?? 0;
  return (
    <Sheet title={t('From a file')}>
      <form className="form" noValidate onSubmit={(e) => (e.preventDefault(), void look())}>
        <p className="small quiet">{t('A workbook (xlsx), of which the first sheet is read, or a CSV file from any spreadsheet. The first row names the columns: package or order, number, read by, left, left reason, right, right reason, and more where the study asks for it. Numbers may have a point or a comma.')}</p>
        <div className="form-row">
          {!only && <Select label={t('Centre')} options={centres} value={centre} onChange={(c) => (setCentre(c), forget())} {...(missing.centre && { error: missing.centre })} />}
          <div className="field" data-invalid={missing.file ? '' : undefined}>
            <label className="label" htmlFor={fileId}>{t('File (xlsx or CSV)')}</label>
            <input id={fileId} type="file" accept=".xlsx,.csv,.txt,.tsv,text/csv,text/plain" aria-describedby={missing.file ? `${fileId}-says` : undefined} onChange={(e) => (setFile(e.target.files?.[0]), forget())} />
            {missing.file && <span id={`${fileId}-says`} className="field-error">{missing.file}</span>}
          </div>
        </div>
        <ErrorBar error={preview.error} />
        <div className="acts">
          <Button type="submit">{preview.isPending ? t('Looking …') : t('Look at this file')}</Button>
        </div>
      </form>
      {preview.data && !take.data && (
        <>
          <PreviewRows preview={preview.data} />
          <ErrorBar error={take.error} />
          <div className="acts">
            {ready > 0 && looked && (
              <Button kind="ink" onPress={() => !take.isPending && take.mutate({ ...looked, hash: preview.data.hash })}>
                {t('{ready, plural, one {Take this reading} other {Take these # readings}}', { ready })}
              </Button>
            )}
            <Button onPress={forget}>{t('Leave the file')}</Button>
          </div>
        </>
      )}
      {take.data && <Outcomes answer={take.data} />}
    </Sheet>
  );
}
