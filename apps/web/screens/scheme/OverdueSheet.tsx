import type { SchemeScreen } from '#libs/contracts/screens/board';
import { CsvButton } from '../../design/CsvButton.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { capital, fullDay, list } from '../../design/format.js';
import { t } from '../../words/t.js';
import { overdueByCause } from './overdue-by-cause.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { Told } from '../../words/Told.js';

const clocks: Record<string, PageSentence> = { ack: 'receipt not confirmed', acknowledgement: 'receipt not confirmed', result: 'no result' };

const clockWords = (clock: string) => (clocks[clock] ? t(clocks[clock]) : clock);

/** One table, cause after cause: the causes are what somebody can act on. */
export function OverdueSheet({ screen }: { screen: SchemeScreen }) {
  const causes = overdueByCause(screen.overdue);
  const rows = causes.flatMap((cause) => cause.studies.map((study, i) => ({ ...study, of: cause, first: i === 0 })));
  return (
    <Sheet title={t('Past their day')}>
      {rows.length === 0 ? (
        <p className="said">{t('No study is past its day.')}</p>
      ) : (
        <>
          <p className="said">
            <Told text={t('**{count, plural, one {# study is} other {# studies are}} past the agreed day**: {causes}.', { count: rows.length, causes: list(causes.map((c) => `${c.studies.length} ${c.words}`)) })} />
          </p>
          <Table
            caption={t('Studies past their day, by cause')}
            rows={rows}
            rowKey={(row, i) => `${row.accession}-${i}`}
            columns={[
              { head: t('Why'), rowHead: true, cell: (row) => <span className={row.first ? (row.of.code === '' ? 'asked' : undefined) : 'vh'}>{capital(row.of.words)}</span> },
              { head: t('Order'), cell: (row) => <><span className="val">{row.accession}</span><br /><span className="label">{row.study}</span></> },
              { head: t('From, and with'), cell: (row) => <>{row.practice}<br /><span className="label">{row.centre}</span></> },
              { head: t('Late'), cell: (row) => <>{clockWords(row.clock)}<br /><span className="label">{t('due {day}', { day: fullDay(row.dueDay) })}</span></> },
            ]}
          />
          <p className="after"><CsvButton name="past-their-day.csv" of={t('Past their day')} head={['Why', 'Order', 'Study', 'Practice', 'Centre', 'Late', 'Due']} rows={rows.map((r) => [r.of.words, r.accession, r.study, r.practice, r.centre, clockWords(r.clock), r.dueDay])} /></p>
        </>
      )}
    </Sheet>
  );
}
