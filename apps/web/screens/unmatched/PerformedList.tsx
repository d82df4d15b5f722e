import { setAsideImage, type UnmatchedPerformed } from '#libs/contracts/gateway';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { useSetAsidePerformed } from '../../api/unmatched.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { momentAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';

const states: Record<UnmatchedPerformed['state'], PageSentence> = { inProgress: 'At work', completed: 'Done', discontinued: 'Broken off' };

/** What machines say of work that fits no order. Nobody has to act on it; it is here to be found. */
export function PerformedList({ rows }: { rows: UnmatchedPerformed[] }) {
  const zone = useMe().zone;
  if (rows.length === 0) return null;
  return (
    <Sheet title={t('Work of the machines without an order')} className="unmatched-work">
      <p className="small quiet">{t('Their own words, unchecked. One goes to an order by itself when all of its images are put there.')}</p>
      <Table<UnmatchedPerformed>
        caption={t('What the machines say of their work')}
        rows={rows}
        rowKey={(row) => row.id}
        columns={[
          { head: t('Machine'), rowHead: true, cell: (row) => <>{row.from}<span className="label">{momentAt(row.at, zone)}, {t(states[row.state])}</span></> },
          { head: t('It says'), cell: (row) => <Said of={row} /> },
          { head: t('Why it fits no order'), cell: (row) => row.why },
          { head: t('Set aside'), cell: (row) => <SetAside of={row} /> },
        ]}
      />
    </Sheet>
  );
}

const Said = ({ of: { said } }: { of: UnmatchedPerformed }) => (said.length === 0 ? t('Nothing more.') : (
  <ul className="lines">
    {said.map(({ what, words }) => (
      <li key={what}>
        {what}: <span className="num">{words}</span>
      </li>
    ))}
  </ul>
));

function SetAside({ of: { id } }: { of: UnmatchedPerformed }) {
  const setAside = useSetAsidePerformed();
  return (
    <AddForm opens={t('It belongs to no order')} saves={t('Set it aside')} schema={setAsideImage} add={{ ...setAside, mutate: (body, then) => setAside.mutate({ step: id, body }, then) }}>
      {(entry) => <TextField label={t('Why')} {...entry.field('why')} autoComplete="off" />}
    </AddForm>
  );
}
