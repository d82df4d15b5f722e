import type { VisitView } from '#libs/contracts/screens/order';
import { Table } from '../../../design/Table.js';
import { timeAt } from '../../../design/format.js';

type Reading = VisitView['readings'][number];
const measured = (key: string, unit: string) => (r: Reading) => (r.values[key] === undefined || r.values[key] === null ? <span className="quiet">not taken</span> : <span className="val">{`${String(r.values[key])}${unit}`}</span>);

export function Readings({ visit, zone }: { visit: VisitView; zone: string }) {
  if (visit.readings.length === 0) return null;
  return (
    <section>
      <h3>Readings</h3>
      <Table
        caption="Readings while asleep"
        rows={visit.readings.toReversed()}
        rowKey={(r, i) => `${r.at}${i}`}
        columns={[
          { head: 'Time', cell: (r) => timeAt(r.at, zone), rowHead: true },
          { head: 'Heart, /min', cell: measured('heartRate', ''), right: true },
          { head: 'Breathing, /min', cell: measured('breaths', ''), right: true },
          { head: 'Oxygen', cell: measured('spo2', ' %'), right: true },
          { head: 'Temperature', cell: measured('temperature', ' °C'), right: true },
          { head: 'Gums', cell: (r) => String(r.values.gums ?? '') },
          { head: 'By', cell: (r) => [r.values.note, r.by].filter(Boolean).map(String).join('; ') },
        ]}
      />
    </section>
  );
}
