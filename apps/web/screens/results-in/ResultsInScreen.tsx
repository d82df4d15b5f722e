import { useNavigate, useSearch } from '@tanstack/react-router';
import { Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { t } from '../../words/t.js';
import { FileSheet } from './FileSheet.js';
import { KeysSheet } from './KeysSheet.js';
import { LeftSheet } from './LeftSheet.js';
import { useResultsIn } from './queries.js';
import './results-in.css';

export function ResultsInScreen() {
  const { page = 1 } = useSearch({ from: '/inside/results-in' });
  const navigate = useNavigate({ from: '/results-in' });
  return <ResultsIn lead={false} page={page} onPage={(to) => void navigate({ search: searchOf(to) })} />;
}

export function SchemeResultsInScreen() {
  const { page = 1 } = useSearch({ from: '/inside/scheme/results-in' });
  const navigate = useNavigate({ from: '/scheme/results-in' });
  return <ResultsIn lead page={page} onPage={(to) => void navigate({ search: searchOf(to) })} />;
}

const searchOf = (page: number) => (page > 1 ? { page } : {});

/** Readings that come in a file or by themselves, and those that led nowhere. */
function ResultsIn({ lead, page, onPage }: { lead: boolean; page: number; onPage: (page: number) => void }) {
  const { data, error } = useResultsIn(lead, page);
  if (!data) return error ? <NotShown title={t('Readings in')} error={error} /> : <Loading what={t('the readings')} />;
  return (
    <>
      <div className="head">
        <h1>{t('Readings in')}</h1>
        <p>{t('What a centre read, in a file or from its computer. Whatever way it comes, a veterinarian of the practice looks at it before anybody is told.')}</p>
      </div>
      <div className="stack results-in">
        <LeftSheet left={data.left.rows} lead={lead}>
          <Pager page={page} more={data.left.more} onPage={onPage} />
        </LeftSheet>
        {data.uploads && <FileSheet centres={data.centres} lead={lead} />}
        {data.keys && <KeysSheet keys={data.keys} lead={lead} />}
      </div>
    </>
  );
}
