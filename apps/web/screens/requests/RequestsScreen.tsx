import { useNavigate, useSearch } from '@tanstack/react-router';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { t } from '../../words/t.js';
import { NewRequest } from './NewRequest.js';
import { RequestSheet } from './RequestSheet.js';
import { useRequests } from './queries.js';
import './requests.css';

/** What people ask about their own data, each with its clock; for the practice manager. */
export function RequestsScreen() {
  const { page = 1 } = useSearch({ from: '/inside/requests' });
  const navigate = useNavigate({ from: '/requests' });
  const { data, error } = useRequests(page);
  if (!data) return error ? <NotShown title={t('Data requests')} error={error} /> : <Loading what={t('the requests')} />;
  const open = data.rows.filter((r) => !r.closed);
  const closed = data.rows.filter((r) => r.closed);
  return (
    <>
      <div className="head">
        <h1>{t('Data requests')}</h1>
        <p>{t('People ask what is kept about them, and what becomes of it. A month to answer; your own law may ask for less.')}</p>
        <div className="acts">
          <CsvLink path="/requests/export.csv" />
        </div>
      </div>
      <NewRequest today={data.today} />
      <div className="requests">
        {data.rows.length === 0 && <Empty title={t('Nobody has asked yet')}>{t('When somebody asks by letter, by mail or at the desk, enter it here on the same day.')}</Empty>}
        {open.map((r) => (
          <RequestSheet key={r.id} request={r} zone={data.zone} />
        ))}
        {closed.length > 0 && (
          <details>
            <summary>{t('Closed requests ({count})', { count: closed.length })}</summary>
            {closed.map((r) => (
              <RequestSheet key={r.id} request={r} zone={data.zone} />
            ))}
          </details>
        )}
      </div>
      <Pager page={page} more={data.more} onPage={(to) => void navigate({ search: to > 1 ? { page: to } : {} })} />
    </>
  );
}
