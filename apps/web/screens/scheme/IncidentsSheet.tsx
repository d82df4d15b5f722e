import type { SchemeScreen } from '#libs/contracts/screens/board';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { fullDay } from '../../design/format.js';

/** What went wrong in the scheme's practices; what was found is written in the practice's own record. */
export function IncidentsSheet({ screen }: { screen: SchemeScreen }) {
  if (screen.incidents.length === 0) return null;
  return (
    <Sheet title="Incidents">
      <Table
        caption="Incidents, open ones first"
        rows={screen.incidents}
        rowKey={(row, i) => `${row.accession}-${i}`}
        columns={[
          { head: 'What', rowHead: true, cell: (row) => row.what },
          { head: 'Order', cell: (row) => <><span className="val">{row.accession}</span><br /><span className="label">{row.study}</span></> },
          { head: 'Practice', cell: (row) => row.practice },
          { head: 'Opened, closed', cell: (row) => <>{fullDay(row.openedOn)}<br /><span className="label">{row.closedOn ? `closed ${fullDay(row.closedOn)}` : 'open'}</span></> },
        ]}
      />
    </Sheet>
  );
}
