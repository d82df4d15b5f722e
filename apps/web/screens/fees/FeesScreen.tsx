import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { query } from '../../api/client.js';
import { buttonClass } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { amount, shortDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import { useFees, type FeesShown } from './queries.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

const shows: { id: FeesShown; name: PageSentence }[] = [
  { id: 'open', name: 'Open' },
  { id: 'uncharged', name: 'Gone home, not charged' },
  { id: 'all', name: 'All orders' },
];
const nothing: Record<FeesShown, PageSentence> = {
  open: 'All that was charged is paid. Look at “Gone home, not charged” for visits that nobody has charged yet.',
  uncharged: 'Every visit from which a dog has gone home is charged.',
  all: 'An order is here from the moment at which it is booked.',
};

/** What is open with whom. */
export function FeesScreen() {
  const search = useSearch({ from: '/inside/fees' });
  const navigate = useNavigate({ from: '/fees' });
  const show = search.show ?? 'open';
  const q = useDeferredValue(search.q);
  const { data, error } = useFees({ show, ...(q && { q }), ...(search.page && { page: search.page }) });
  return (
    <>
      <div className="head">
        <h1>{t('Fees')}</h1>
        <div className="acts">
          <Link to="/fees/centres" search={{}} className={buttonClass()}>
            {t('Bills of the centres')}
          </Link>
          <CsvLink path={`/fees/export.csv${query({ show, q })}`} />
        </div>
      </div>
      <section className="sheet" aria-label={t('Fees')}>
        <div className="list-head">
          <RadioChoice label={t('Show')} options={named(shows)} value={show} onChange={(s) => void navigate({ search: (old) => ({ ...old, show: s === 'open' ? undefined : s, page: undefined }), replace: true })} />
          <TextField label={t('Dog or order number')} type="search" value={search.q} onChange={(text) => void navigate({ search: (old) => ({ ...old, q: text, page: undefined }), replace: true })} />
        </div>
        <ErrorBar error={error} />
        {!data ? (
          !error && <Loading what={t('the fees')} />
        ) : data.rows.length === 0 ? (
          <Empty title={t('Nothing here')}>{search.q ? t('Nothing found for “{q}”.', { q: search.q }) : t(nothing[show])}</Empty>
        ) : (
          <Table
            caption={t('Fees, in {currency}', { currency: data.currency })}
            rows={data.rows}
            rowKey={(r) => r.order}
            columns={[
              { head: t('Dog'), cell: (r) => <Link to="/orders/$order/fees" params={{ order: r.order }}>{r.dog}</Link>, rowHead: true },
              { head: t('Order'), cell: (r) => <span className="num nowrap">{r.accession}</span> },
              { head: t('Payer'), cell: (r) => r.payer ?? <span className="quiet">{t('nobody named')}</span> },
              { head: t('Visit'), cell: (r) => (r.visitDay ? <span className="nowrap">{shortDay(r.visitDay)}</span> : <span className="quiet">{t('no day')}</span>) },
              { head: t('Accepted'), cell: (r) => amount(r.acceptedMinor), right: true },
              { head: t('Charged'), cell: (r) => amount(r.chargedMinor), right: true },
              { head: t('Paid'), cell: (r) => amount(r.paidMinor), right: true },
              { head: t('Open, {currency}', { currency: data.currency }), cell: (r) => <b className="nowrap">{r.openMinor < 0 ? t('{amount} too much', { amount: amount(-r.openMinor) }) : amount(r.openMinor)}</b>, right: true },
            ]}
          />
        )}
        <Pager page={search.page ?? 1} more={data?.more ?? false} onPage={(page) => void navigate({ search: (old) => ({ ...old, page: page > 1 ? page : undefined }) })} />
      </section>
    </>
  );
}
