import { Link } from '@tanstack/react-router';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Table } from '../../design/Table.js';
import { amount, fullDay, shortDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import { useBillLines, useBills, useUnbilled } from './queries.js';

type Paged = { page: number; onPage: (page: number) => void };

export function BillsList({ page, onPage }: Paged) {
  const { data, error } = useBills(page);
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what={t('the bills')} />;
  if (data.rows.length === 0 && page === 1) return <Empty title={t('No bill yet')}>{t('When a centre sends a bill, enter it here, by hand or from its file. Each line is then compared with what you sent.')}</Empty>;
  return (
    <>
      <Table
        caption={t('Bills, in {currency}', { currency: data.currency })}
        rows={data.rows}
        rowKey={(b) => b.id}
        columns={[
          { head: t('Bill'), rowHead: true, cell: (b) => <Link to="/fees/centres/$bill" params={{ bill: b.id }}>{b.number}</Link> },
          { head: t('Centre'), cell: (b) => b.centre },
          { head: t('Dated'), cell: (b) => <span className="nowrap">{fullDay(b.day)}</span> },
          { head: t('Lines'), cell: (b) => (b.withdrawn ? <span className="quiet">{t('withdrawn')}</span> : linesWords(b)) },
          { head: t('Paid'), cell: (b) => (b.paid ? t('on {day}', { day: fullDay(b.paid) }) : b.withdrawn ? '' : b.overdue && b.due ? <span className="held-words"><b>{t('no, was due {day}', { day: fullDay(b.due) })}</b></span> : b.due ? t('no, due {day}', { day: fullDay(b.due) }) : t('no')) },
          { head: t('Sum, {currency}', { currency: data.currency }), right: true, cell: (b) => amount(b.sumMinor) },
        ]}
      />
      <Pager page={page} more={data.more} onPage={onPage} />
    </>
  );
}

const linesWords = ({ lines, unmatched, disputed }: { lines: number; unmatched: number; disputed: number }) =>
  [t('{lines, plural, one {# line} other {# lines}}', { lines }), unmatched > 0 && t('{unmatched, plural, one {# fits} other {# fit}} nothing', { unmatched }), disputed > 0 && t('{disputed} disputed', { disputed })].filter(Boolean).join(', ');

export function LinesList({ show, page, onPage }: Paged & { show: 'unmatched' | 'disputed' }) {
  const { data, error } = useBillLines(show, page);
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what={t('the lines')} />;
  if (data.rows.length === 0 && page === 1) return show === 'unmatched' ? <Empty title={t('Every line fits')}>{t('Each line of every bill is for a study that you sent, once, for what was agreed. Nothing to do.')}</Empty> : <Empty title={t('Nothing is disputed')}>{t('On a bill’s page a line can be disputed, with the reason.')}</Empty>;
  return (
    <>
      <Table
        caption={t('Lines, in {currency}', { currency: data.currency })}
        rows={data.rows}
        rowKey={(l) => l.id}
        columns={[
          { head: t('Bill, line'), rowHead: true, cell: (l) => <><Link to="/fees/centres/$bill" params={{ bill: l.bill }}>{l.number}</Link>, {l.place}<span className="label block">{l.centre}</span></> },
          { head: t('As the bill has it'), cell: (l) => <><span className="num nowrap">{l.reference}</span><span className="block small">{l.study}</span></> },
          { head: t('What it is'), cell: (l) => l.says },
          { head: t('Amount, {currency}', { currency: data.currency }), right: true, cell: (l) => amount(l.amountMinor) },
        ]}
      />
      <Pager page={page} more={data.more} onPage={onPage} />
    </>
  );
}

export function UnbilledList({ page, onPage }: Paged) {
  const { data, error } = useUnbilled(page);
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what={t('the studies')} />;
  if (data.rows.length === 0 && page === 1) return <Empty title={t('All that was read is billed')}>{t('A study that a centre has read, and that no bill has, is shown here. Nothing to do.')}</Empty>;
  return (
    <>
      <Table
        caption={t('Studies, fees in {currency}', { currency: data.currency })}
        rows={data.rows}
        rowKey={(s) => s.study + s.centre}
        columns={[
          { head: t('Dog'), rowHead: true, cell: (s) => <Link to="/orders/$order/fees" params={{ order: s.order }}>{s.dog}</Link> },
          { head: t('Study'), cell: (s) => <>{s.name}<span className="label block num">{s.accession}</span></> },
          { head: t('Centre'), cell: (s) => s.centre },
          { head: t('Sent'), cell: (s) => <span className="nowrap">{shortDay(s.sentOn)}</span> },
          { head: t('Read'), cell: (s) => <span className="nowrap">{shortDay(s.readOn)}</span> },
          { head: t('Bill'), cell: (s) => s.says },
        ]}
      />
      <Pager page={page} more={data.more} onPage={onPage} />
    </>
  );
}
