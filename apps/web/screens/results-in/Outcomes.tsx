import type { DeliveryAnswer } from '#libs/contracts/results-in';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';

const outcomes = { taken: 'Taken in', alreadyThere: 'There already', notTaken: 'Not taken in' } as const;

/** What became of each row. */
export function Outcomes({ answer: { readings } }: { answer: DeliveryAnswer }) {
  const taken = readings.filter((r) => r.outcome === 'taken').length;
  return (
    <div className="preview" role="status">
      <p><b>{t('{taken, plural, =0 {No reading was taken.} one {# reading was taken.} other {# readings were taken.}}', { taken })}</b></p>
      <Table
        caption={t('What became of each row')}
        rows={readings}
        rowKey={(r) => String(r.place)}
        columns={[
          { head: t('Row'), rowHead: true, cell: (r) => <span className="num">{r.place}</span> },
          { head: t('Number'), cell: (r) => r.number },
          { head: t('What became of it'), cell: (r) => <><b>{t.known(outcomes[r.outcome])}.</b> {t.known(r.words)}</> },
        ]}
      />
    </div>
  );
}
