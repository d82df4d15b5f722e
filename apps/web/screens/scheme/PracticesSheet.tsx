import type { SchemeScreen } from '#libs/contracts/screens/board';
import { CsvButton } from '../../design/CsvButton.js';
import { Empty } from '../../design/Empty.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { list } from '../../design/format.js';
import { t } from '../../words/t.js';
import { Until } from '../practice/Until.js';

/** By the day on which it ends, soonest first; practices by name, so that nobody is first or last. */
export function PracticesSheet({ screen, today }: { screen: SchemeScreen; today: string }) {
  const people = screen.practices.flatMap((p) => p.accredited.map((a) => ({ ...a, practice: p.name }))).sort((a, b) => a.until.localeCompare(b.until));
  const without = screen.practices.filter((p) => !p.accredited.some((a) => a.until >= today));
  const practices = [...screen.practices].sort((a, b) => a.name.localeCompare(b.name));
  return (
    <>
      <Sheet title={t('Accreditation, by the day it ends')}>
        {people.length === 0 ? (
          <Empty title={t('Nobody is accredited')}>{t('A practice’s manager enters who may take which views, and what shows it.')}</Empty>
        ) : (
          <Table
            caption={t('Accreditation of operators')}
            rows={people}
            rowKey={(a, i) => `${a.staff}-${i}`}
            columns={[
              { head: t('Holds'), rowHead: true, cell: (a) => <Until day={a.until} today={today} /> },
              { head: t('Who'), cell: (a) => <>{a.staff}<br /><span className="label">{a.practice}</span></> },
              { head: t('Study'), cell: (a) => a.protocol },
            ]}
          />
        )}
        {people.length > 0 && <p className="after"><CsvButton name="accreditation.csv" of={t('Accreditation of operators')} head={['Name', 'Practice', 'Study', 'Until']} rows={people.map((a) => [a.staff, a.practice, a.protocol, a.until])} /></p>}
        {without.length > 0 && <p className="small after">{t('Nobody is accredited today at {practices}; dogs for loaded views are referred from there.', { practices: list(without.map((p) => p.name)) })}</p>}
      </Sheet>
      <Sheet title={t('Practices')}>
        {practices.length === 0 ? (
          <Empty title={t('No practice yet')}>{t('The first one is made with the scheme.')}</Empty>
        ) : (
          <ul className="practices">
            {practices.map((p) => (
              <li key={p.name}>
                <b>{p.name}</b>, {p.place}: {p.open === 0 ? t('no order open') : t('{open, plural, one {# order open} other {# orders open}}', { open: p.open })}.
              </li>
            ))}
          </ul>
        )}
        {practices.length > 0 && <p className="after"><CsvButton name="practices.csv" of={t('Practices')} head={['Practice', 'Place', 'Open orders', 'Accredited today']} rows={practices.map((p) => [p.name, p.place, p.open, p.accredited.filter((a) => a.until >= today).map((a) => a.staff).join('; ')])} /></p>}
      </Sheet>
    </>
  );
}
