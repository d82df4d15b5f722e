import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { query } from '../../api/client.js';
import { usePeopleList } from '../../api/register.js';
import { buttonClass } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';

/** Owners, breeders, agents and payers that this practice knows, and how they are reached. */
export function PeopleScreen() {
  const search = useSearch({ from: '/inside/people' });
  const navigate = useNavigate({ from: '/people' });
  const q = useDeferredValue(search.q);
  const { data, error } = usePeopleList({ ...(q && { q }), ...(search.page && { page: search.page }) });
  return (
    <>
      <div className="head">
        <h1>{t('People')}</h1>
        <div className="acts">
          <Link to="/dogs" search={{}} className={buttonClass()}>
            {t('Dogs')}
          </Link>
          <CsvLink path={`/people.csv${query({ q })}`} />
        </div>
      </div>
      <section className="sheet" aria-label={t('People')}>
        <div className="list-head">
          <TextField label={t('Name, phone or mail address')} type="search" value={search.q} onChange={(text) => void navigate({ search: (old) => ({ ...old, q: text, page: undefined }), replace: true })} />
        </div>
        <ErrorBar error={error} />
        {!data ? (
          !error && <Loading what={t('the people')} />
        ) : data.rows.length === 0 ? (
          <Empty title={search.q ? t('Nobody found for “{q}”', { q: search.q }) : t('Nobody yet')}>{t('People are entered with their dogs. Those whom other practices know are never shown here.')}</Empty>
        ) : (
          <Table
            caption={t('People')}
            rows={data.rows}
            rowKey={(p) => p.id}
            columns={[
              { head: t('Name'), rowHead: true, cell: (p) => p.name },
              { head: t('Phone'), cell: (p) => <span className="num nowrap">{p.phone ?? <span className="quiet">{t('none')}</span>}</span> },
              { head: t('Mail address'), cell: (p) => p.email ?? <span className="quiet">{t('none')}</span> },
              { head: t('Address'), cell: (p) => p.address ?? <span className="quiet">{t('none')}</span> },
              { head: t('Dogs'), cell: (p) => <Link to="/dogs" search={{ q: p.name }} aria-label={t('Look for dogs of {name}', { name: p.name })}>{t('Look for dogs')}</Link> },
            ]}
          />
        )}
        <Pager page={search.page ?? 1} more={data?.more ?? false} onPage={(page) => void navigate({ search: (old) => ({ ...old, page: page > 1 ? page : undefined }) })} />
      </section>
    </>
  );
}
