import type { SchemeScreen } from '#libs/contracts/screens/board';
import { CsvButton } from '../../design/CsvButton.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';

/** What went wrong in the scheme's practices; what was found is written in the practice's own record. */
export function IncidentsSheet({ screen }: { screen: SchemeScreen }) {
  if (screen.incidents.length === 0) return null;
  return (
    <Sheet title={t('Incidents')}>
      <Table
        caption={t('Incidents, open ones first')}
        rows={screen.incidents}
        rowKey={(row, i) => `${row.accession}-${i}`}
        columns={[
          { head: t('What'), rowHead: true, cell: (row) => row.what },
          { head: t('Order'), cell: (row) => <><span className="val">{row.accession}</span><br /><span className="label">{row.study}</span></> },
          { head: t('Practice'), cell: (row) => row.practice },
          { head: t('Opened, closed'), cell: (row) => <>{fullDay(row.openedOn)}<br /><span className="label">{row.closedOn ? t('closed {day}', { day: fullDay(row.closedOn) }) : t('open')}</span></> },
        ]}
      />
      <p className="after"><CsvButton name="incidents.csv" of={t('Incidents')} head={['What', 'Order', 'Study', 'Practice', 'Opened', 'Closed']} rows={screen.incidents.map((i) => [i.what, i.accession, i.study, i.practice, i.openedOn, i.closedOn])} /></p>
    </Sheet>
  );
}
