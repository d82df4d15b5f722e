import { newRoom, type PracticeScreen } from '#libs/contracts/register';
import { Empty } from '../../design/Empty.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { useAdd } from './queries.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

const kinds = [
  { id: 'xray', name: 'X-ray room' },
  { id: 'ward', name: 'Ward' },
  { id: 'consulting', name: 'Consulting room' },
] as const satisfies readonly { id: string; name: PageSentence }[];

export function RoomsSheet({ screen, edits }: { screen: PracticeScreen; edits: boolean }) {
  const add = useAdd('/rooms');
  return (
    <Sheet title={t('Rooms')}>
      {screen.rooms.length === 0 ? (
        <Empty title={t('No room yet')}>{t('A visit is booked into an X-ray room.')}</Empty>
      ) : (
        <Table
          caption={t('Rooms of the practice')}
          rows={screen.rooms}
          rowKey={(r) => r.id}
          columns={[
            { head: t('Name'), rowHead: true, cell: (r) => r.name },
            { head: t('Kind'), cell: (r) => named(kinds).find((k) => k.id === r.kind)?.name ?? r.kind },
          ]}
        />
      )}
      {edits && (
        <AddForm opens={t('Add a room')} saves={t('Add this room')} schema={newRoom} add={add}>
          {(entry) => (
            <>
              <TextField label={t('Name')} {...entry.field('name')} autoComplete="off" />
              <RadioChoice label={t('Kind')} options={named(kinds)} {...entry.field('kind')} />
            </>
          )}
        </AddForm>
      )}
    </Sheet>
  );
}
