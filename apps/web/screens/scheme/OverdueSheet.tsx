import type { SchemeScreen } from '#libs/contracts/screens/board';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { capital, fullDay, list, plural } from '../../design/format.js';
import { overdueByCause } from './overdue-by-cause.js';

const clocks: Record<string, string> = { ack: 'receipt not confirmed', acknowledgement: 'receipt not confirmed', result: 'no result' };

/** One table, cause after cause: the causes are what somebody can act on. */
export function OverdueSheet({ screen }: { screen: SchemeScreen }) {
  const causes = overdueByCause(screen.overdue);
  const rows = causes.flatMap((cause) => cause.studies.map((study, i) => ({ ...study, of: cause, first: i === 0 })));
  return (
    <Sheet title="Past their day">
      {rows.length === 0 ? (
        <p className="said">No study is past its day.</p>
      ) : (
        <>
          <p className="said">
            <b>{plural(rows.length, 'study is', 'studies are')} past the agreed day</b>: {list(causes.map((c) => `${c.studies.length} ${c.words}`))}.
          </p>
          <Table
            caption="Studies past their day, by cause"
            rows={rows}
            rowKey={(row, i) => `${row.accession}-${i}`}
            columns={[
              { head: 'Why', rowHead: true, cell: (row) => <span className={row.first ? (row.of.code === '' ? 'asked' : undefined) : 'vh'}>{capital(row.of.words)}</span> },
              { head: 'Order', cell: (row) => <><span className="val">{row.accession}</span><br /><span className="label">{row.study}</span></> },
              { head: 'From, and with', cell: (row) => <>{row.practice}<br /><span className="label">{row.centre}</span></> },
              { head: 'Late', cell: (row) => <>{clocks[row.clock] ?? row.clock}<br /><span className="label">due {fullDay(row.dueDay)}</span></> },
            ]}
          />
        </>
      )}
    </Sheet>
  );
}
