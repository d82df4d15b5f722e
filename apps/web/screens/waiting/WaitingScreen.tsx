import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import type { WaitingList } from '#libs/contracts/waiting';
import { useLeaveWaiting, useWaitingList } from '../../api/waiting.js';
import { Button } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Table } from '../../design/Table.js';
import { momentAt, shortDay } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { JoinForm } from './JoinForm.js';
import { Told } from '../../words/Told.js';

type Row = WaitingList['rows'][number];

/** Visits for which an earlier time is wanted, in the order of asking. */
export function WaitingScreen() {
  const { order, visit, dog, page = 1 } = useSearch({ from: '/inside/waiting' });
  const navigate = useNavigate({ from: '/waiting' });
  const { data, error } = useWaitingList(page);
  const done = () => void navigate({ search: {}, replace: true });
  return (
    <>
      <div className="head">
        <h1>{t('Waiting for an earlier time')}</h1>
        <p>{t('A time that becomes free is offered by mail to the first who can use it, for a day. No answer, or a no, and it goes to the next. Until a yes the visit keeps its time.')}</p>
        <div className="acts">
          <CsvLink path="/waiting-list.csv" />
        </div>
      </div>
      {order && visit && <JoinForm order={order} visit={visit} dog={dog ?? t('this dog')} onDone={done} />}
      <section className="sheet" aria-label={t('Waiting list')}>
        <ErrorBar error={error} />
        {!data ? !error && <Loading what={t('the list')} /> : data.rows.length === 0 ? <Empty title={t('Nobody waits')}>{t('From the page of an order, a visit that has not begun can be put here.')}</Empty> : <Rows rows={data.rows} />}
        <Pager page={page} more={data?.more ?? false} onPage={(to) => void navigate({ search: (old) => ({ ...old, page: to > 1 ? to : undefined }) })} />
      </section>
    </>
  );
}

function Rows({ rows }: { rows: Row[] }) {
  const me = useMe();
  const leave = useLeaveWaiting();
  const zone = me.zone;
  return (
    <>
      <ErrorBar error={leave.error} />
      <Table<Row>
        caption={t('Waiting list')}
        rows={rows}
        rowKey={(r) => r.entry}
        columns={[
          { head: t('Dog'), rowHead: true, cell: (r) => <Link to="/orders/$order" params={{ order: r.order }}>{r.dog}</Link> },
          { head: t('Owner'), cell: (r) => <>{r.owner}{r.phone && <span className="nowrap">, {r.phone}</span>}</> },
          { head: t('Studies'), cell: (r) => r.studies.join(' · ') },
          { head: t('Booked'), cell: (r) => <span className="nowrap">{r.day && r.start ? `${shortDay(r.day)}, ${r.start}` : t('no time yet')}</span> },
          { head: t('Offered'), cell: (r) => <Offered row={r} zone={zone} /> },
          { head: t('Since'), cell: (r) => <span className="nowrap">{momentAt(r.since, zone)}</span> },
          { head: t('List'), cell: (r) => <Button aria-label={t('Take {dog} off the list', { dog: r.dog })} onPress={() => leave.mutate({ entry: r.entry })}>{t('Take off')}</Button> },
        ]}
      />
    </>
  );
}

const Offered = ({ row, zone }: { row: Row; zone: string }) => (
  <>
    {row.offer ? (
      <>
        <Told text={t('**{day}, {start}**, until {until}', { day: shortDay(row.offer.day), start: row.offer.start, until: momentAt(row.offer.expiresAt, zone) })} />
      </>
    ) : (
      <span className="quiet">{row.fromDay ? t('nothing free before, from {day}', { day: shortDay(row.fromDay) }) : t('nothing free before')}</span>
    )}
    {row.earlier.map((words) => (
      <span className="label block" key={words}>
        {words}
      </span>
    ))}
  </>
);
