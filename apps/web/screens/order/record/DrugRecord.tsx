import type { VisitView } from '#libs/contracts/screens/order';
import { Table } from '../../../design/Table.js';
import { timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { optionWords } from '../forms/option-words.js';

export function DrugRecord({ visit, zone }: { visit: VisitView; zone: string }) {
  if (visit.drugs.length === 0) return null;
  return (
    <section>
      <h3>{t('Drugs')}</h3>
      <Table
        caption={t('Drugs drawn up, given and discarded')}
        rows={visit.drugs}
        rowKey={(d, i) => `${d.at}${i}`}
        columns={[
          { head: t('Time'), cell: (d) => timeAt(d.at, zone), rowHead: true },
          { head: t('What'), cell: (d) => optionWords(d.event) },
          { head: t('Batch'), cell: (d) => d.batch },
          { head: t('By'), cell: (d) => d.by },
          { head: t('Drug and amount'), cell: (d) => d.words },
        ]}
      />
    </section>
  );
}
