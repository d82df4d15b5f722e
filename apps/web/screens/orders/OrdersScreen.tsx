import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { useOrders, type OrdersShown } from '../../api/board.js';
import { query } from '../../api/client.js';
import { buttonClass } from '../../design/Button.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { shortDay } from '../../design/format.js';

const shows: { id: OrdersShown; name: string }[] = [
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
        <h1>Orders</h1>
        <div className="acts">
          <a className={buttonClass()} href={`/api/orders/export.csv${query({ show, ...(q && { q }) })}`} download>
            Fetch as a file for a spreadsheet
          </a>
          <a className={buttonClass()} href="/api/orders/results.csv" download>
            All results as a file
          </a>
        </div>
      </div>
      <section className="sheet" aria-label="Orders">
        <div className="list-head">
          <RadioChoice label="Show" options={shows} value={show} onChange={(s) => void navigate({ search: (old) => ({ ...old, show: s === 'open' ? undefined : s, page: undefined }), replace: true })} />
          <TextField label="Dog, owner or order number" type="search" value={search.q} onChange={(text) => void navigate({ search: (old) => ({ ...old, q: text, page: undefined }), replace: true })} />
        </div>
        <ErrorBar error={error} />
        {!data ? (
          !error && <Loading what="the orders" />
        ) : data.rows.length === 0 ? (
          <Empty title="No orders here">{search.q ? `Nothing found for “${search.q}”. Other practices’ orders are never shown here.` : 'Nothing of this kind. Choose “All” to see every order.'}</Empty>
        ) : (
          <Table
            caption="Orders"
            rows={data.rows}
            rowKey={(r) => r.id}
            columns={[
              { head: 'Order', cell: (r) => <Link to="/orders/$order" params={{ order: r.id }} className="num nowrap">{r.accession}</Link> },
              { head: 'Dog', cell: (r) => r.dog, rowHead: true },
              { head: 'First hold', cell: (r) => (r.hold ? <span className="held-words"><b>{r.hold}</b></span> : <span className="quiet">nothing missing</span>) },
              { head: 'Where it stands', cell: (r) => <>{r.stepLabel}{r.overdue && <span className="held-words"> <b>overdue</b></span>}</> },
              { head: 'Studies', cell: (r) => r.studies.join(' · ') },
              { head: 'Visit', cell: (r) => (r.day ? <span className="nowrap">{shortDay(r.day)}</span> : <span className="quiet">no day</span>) },
              { head: 'Owner', cell: (r) => r.owner },
              { head: 'Breed', cell: (r) => r.breed },
            ]}
          />
        )}
        <Pager page={search.page ?? 1} more={data?.more ?? false} onPage={(page) => void navigate({ search: (old) => ({ ...old, page: page > 1 ? page : undefined }) })} />
      </section>
    </>
  );
}
