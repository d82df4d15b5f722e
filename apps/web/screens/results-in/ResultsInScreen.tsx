import { Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { t } from '../../words/t.js';
import { FileSheet } from './FileSheet.js';
import { KeysSheet } from './KeysSheet.js';
import { LeftSheet } from './LeftSheet.js';
import { useResultsIn } from './queries.js';
import './results-in.css';

export const ResultsInScreen = () => <ResultsIn lead={false} />;
export const SchemeResultsInScreen = () => <ResultsIn lead />;

/** Readings that come in a file or by themselves, and those that led nowhere. */
function ResultsIn({ lead }: { lead: boolean }) {
  const { data, error } = useResultsIn(lead);
  if (!data) return error ? <NotShown title={t('Readings in')} error={error} /> : <Loading what={t('the readings')} />;
  return (
    <>
      <div className="head">
        <h1>{t('Readings in')}</h1>
        <p>{t('What a centre read, in a file or from its computer. Whatever way it comes, a veterinarian of the practice looks at it before anybody is told.')}</p>
      </div>
      <div className="stack results-in">
        <LeftSheet left={data.left} lead={lead} />
        {data.uploads && <FileSheet centres={data.centres} lead={lead} />}
        {data.keys && <KeysSheet keys={data.keys} lead={lead} />}
      </div>
    </>
  );
}
