import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import type { WaitingList } from '#libs/contracts/waiting';
import { useLeaveWaiting, useWaitingList } from '../../api/waiting.js';
import { Button } from '../../design/Button.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Table } from '../../design/Table.js';
import { momentAt, shortDay } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { JoinForm } from './JoinForm.js';

type Row = WaitingList['rows'][number];

/** Visits for which an earlier time is wanted, in the order of asking. */
export function WaitingScreen() {
  const { order, visit, dog } = useSearch({ from: '/inside/waiting' });
  const navigate = useNavigate({ from: '/waiting' });
  const { data, error } = useWaitingList();
  const done = () => void navigate({ search: {}, replace: true });
  return (
    <>
      <div className="head">
        <h1>Waiting for an earlier time</h1>
        <p>A time that becomes free is offered by mail to the first who can use it, for a day. No answer, or a no, and it goes to the next. Until a yes the visit keeps its time.</p>
      </div>
      {order && visit && <JoinForm order={order} visit={visit} dog={dog ?? 'this dog'} onDone={done} />}
      <section className="sheet" aria-label="Waiting list">
        <ErrorBar error={error} />
        {!data ? !error && <Loading what="the list" /> : data.rows.length === 0 ? <Empty title="Nobody waits">From the page of an order, a visit that has not begun can be put here.</Empty> : <Rows rows={data.rows} />}
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
        caption="Waiting list"
        rows={rows}
        rowKey={(r) => r.entry}
        columns={[
          { head: 'Dog', rowHead: true, cell: (r) => <Link to="/orders/$order" params={{ order: r.order }}>{r.dog}</Link> },
          { head: 'Owner', cell: (r) => <>{r.owner}{r.phone && <span className="nowrap">, {r.phone}</span>}</> },
          { head: 'Studies', cell: (r) => r.studies.join(' · ') },
          { head: 'Booked', cell: (r) => <span className="nowrap">{r.day && r.start ? `${shortDay(r.day)}, ${r.start}` : 'no time yet'}</span> },
          { head: 'Offered', cell: (r) => <Offered row={r} zone={zone} /> },
          { head: 'Since', cell: (r) => <span className="nowrap">{momentAt(r.since, zone)}</span> },
          { head: 'List', cell: (r) => <Button aria-label={`Take ${r.dog} off the list`} onPress={() => leave.mutate({ entry: r.entry })}>Take off</Button> },
        ]}
      />
    </>
  );
}

const Offered = ({ row, zone }: { row: Row; zone: string }) => (
  <>
    {row.offer ? (
      <>
        <b>{shortDay(row.offer.day)}, {row.offer.start}</b>, until {momentAt(row.offer.expiresAt, zone)}
      </>
    ) : (
      <span className="quiet">nothing free before{row.fromDay && `, from ${shortDay(row.fromDay)}`}</span>
    )}
    {row.earlier.map((words) => (
      <span className="label block" key={words}>
        {words}
      </span>
    ))}
  </>
);
