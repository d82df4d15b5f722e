import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { useOrders, type OrdersShown } from '../../api/board.js';
import { query } from '../../api/client.js';
import { buttonClass } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { shortDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import type { SaidOption } from '../../design/Select.js';

const shows: readonly SaidOption<OrdersShown>[] = [
  { id: 'open', name: 'Open' },
  { id: 'waiting', name: 'Waiting for somebody' },
  { id: 'all', name: 'All' },
];

export function OrdersScreen() {
  const search = useSearch({ from: '/inside/orders' });
  const navigate = useNavigate({ from: '/orders' });
  const show = search.show ?? 'open';
  const q = useDeferredValue(search.q);
  const { data, error } = useOrders({ show, ...(q && { q }), ...(search.page && { page: search.page }) });
  return (
    <>
      <div className="head">
        <h1>{t('Orders')}</h1>
        <div className="acts">
          <CsvLink path={`/orders/export.csv${query({ show, q })}`} />
          <CsvLink path="/orders/results.csv">{t('All results as a file')}</CsvLink>
          <Link to="/results-in" className={buttonClass()}>{t('Readings in')}</Link>
        </div>
      </div>
      <section className="sheet" aria-label={t('Orders')}>
        <div className="list-head">
          <RadioChoice label={t('Show')} options={shows} value={show} onChange={(s) => void navigate({ search: (old) => ({ ...old, show: s === 'open' ? undefined : s, page: undefined }), replace: true })} />
          <TextField label={t('Dog, owner or order number')} type="search" value={search.q} onChange={(text) => void navigate({ search: (old) => ({ ...old, q: text, page: undefined }), replace: true })} />
        </div>
        <ErrorBar error={error} />
        {!data ? (
          !error && <Loading what={t('the orders')} />
        ) : data.rows.length === 0 ? (
          <Empty title={t('No orders here')}>{search.q ? t('Nothing found for “{q}”. Other practices’ orders are never shown here.', { q: search.q }) : t('Nothing of this kind. Choose “All” to see every order.')}</Empty>
        ) : (
          <Table
            caption={t('Orders')}
            rows={data.rows}
            rowKey={(r) => r.id}
            columns={[
              { head: t('Order'), cell: (r) => <Link to="/orders/$order" params={{ order: r.id }} className="num nowrap">{r.accession}</Link> },
              { head: t('Dog'), cell: (r) => r.dog, rowHead: true },
              { head: t('First hold'), cell: (r) => (r.hold ? <span className="held-words"><b>{r.hold}</b></span> : <span className="quiet">{t('nothing missing')}</span>) },
              { head: t('Where it stands'), cell: (r) => <>{r.stepLabel}{r.overdue && <span className="held-words"> <b>{t('overdue')}</b></span>}</> },
              { head: t('Studies'), cell: (r) => r.studies.join(' · ') },
              { head: t('Visit'), cell: (r) => (r.day ? <span className="nowrap">{shortDay(r.day)}</span> : <span className="quiet">{t('no day')}</span>) },
              { head: t('Owner'), cell: (r) => r.owner },
              { head: t('Breed'), cell: (r) => r.breed },
            ]}
          />
        )}
        <Pager page={search.page ?? 1} more={data?.more ?? false} onPage={(page) => void navigate({ search: (old) => ({ ...old, page: page > 1 ? page : undefined }) })} />
      </section>
    </>
  );
}
