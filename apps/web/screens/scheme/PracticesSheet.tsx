import type { SchemeScreen } from '#libs/contracts/screens/board';
import { Empty } from '../../design/Empty.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { list, plural } from '../../design/format.js';
import { Until } from '../practice/Until.js';

/** By the day on which it ends, soonest first; practices by name, so that nobody is first or last. */
export function PracticesSheet({ screen, today }: { screen: SchemeScreen; today: string }) {
  const people = screen.practices.flatMap((p) => p.accredited.map((a) => ({ ...a, practice: p.name }))).sort((a, b) => a.until.localeCompare(b.until));
  const without = screen.practices.filter((p) => !p.accredited.some((a) => a.until >= today));
  const practices = [...screen.practices].sort((a, b) => a.name.localeCompare(b.name));
  return (
    <>
      <Sheet title="Accreditation, by the day it ends">
        {people.length === 0 ? (
          <Empty title="Nobody is accredited">A practice’s manager enters who may take which views, and what shows it.</Empty>
        ) : (
          <Table
            caption="Accreditation of operators"
            rows={people}
            rowKey={(a, i) => `${a.staff}-${i}`}
            columns={[
              { head: 'Holds', rowHead: true, cell: (a) => <Until day={a.until} today={today} /> },
              { head: 'Who', cell: (a) => <>{a.staff}<br /><span className="label">{a.practice}</span></> },
              { head: 'Study', cell: (a) => a.protocol },
            ]}
          />
        )}
        {without.length > 0 && <p className="small after">Nobody is accredited today at {list(without.map((p) => p.name))}; dogs for loaded views are referred from there.</p>}
      </Sheet>
      <Sheet title="Practices">
        {practices.length === 0 ? (
          <Empty title="No practice yet">The first one is made with the scheme.</Empty>
        ) : (
          <ul className="practices">
            {practices.map((p) => (
              <li key={p.name}>
                <b>{p.name}</b>, {p.place}: {p.open === 0 ? 'no order open' : plural(p.open, 'order open', 'orders open')}.
              </li>
            ))}
          </ul>
        )}
      </Sheet>
    </>
  );
}
