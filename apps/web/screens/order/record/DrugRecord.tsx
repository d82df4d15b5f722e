import type { VisitView } from '#libs/contracts/screens/order';
import { Table } from '../../../design/Table.js';
import { timeAt } from '../../../design/format.js';
import { optionWords } from '../forms/option-words.js';

export function DrugRecord({ visit, zone }: { visit: VisitView; zone: string }) {
  if (visit.drugs.length === 0) return null;
  return (
    <section>
      <h3>Drugs</h3>
      <Table
        caption="Drugs drawn up, given and discarded"
        rows={visit.drugs}
        rowKey={(d, i) => `${d.at}${i}`}
        columns={[
          { head: 'Time', cell: (d) => timeAt(d.at, zone), rowHead: true },
          { head: 'What', cell: (d) => optionWords(d.event) },
          { head: 'Batch', cell: (d) => d.batch },
          { head: 'By', cell: (d) => d.by },
          { head: 'Drug and amount', cell: (d) => d.words },
        ]}
      />
    </section>
  );
}
