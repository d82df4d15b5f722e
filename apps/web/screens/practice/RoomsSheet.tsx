import { newRoom, type PracticeScreen } from '#libs/contracts/register';
import { Empty } from '../../design/Empty.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { AddForm } from './AddForm.js';
import { useAdd } from './queries.js';

const kinds = [
  { id: 'xray', name: 'X-ray room' },
  { id: 'ward', name: 'Ward' },
  { id: 'consulting', name: 'Consulting room' },
] as const;

export function RoomsSheet({ screen, edits }: { screen: PracticeScreen; edits: boolean }) {
  const add = useAdd('/rooms');
  return (
    <Sheet title="Rooms">
      {screen.rooms.length === 0 ? (
        <Empty title="No room yet">A visit is booked into an X-ray room.</Empty>
      ) : (
        <Table
          caption="Rooms of the practice"
          rows={screen.rooms}
          rowKey={(r) => r.id}
          columns={[
            { head: 'Name', rowHead: true, cell: (r) => r.name },
            { head: 'Kind', cell: (r) => kinds.find((k) => k.id === r.kind)?.name ?? r.kind },
          ]}
        />
      )}
      {edits && (
        <AddForm opens="Add a room" saves="Add this room" schema={newRoom} add={add}>
          {(entry) => (
            <>
              <TextField label="Name" {...entry.field('name')} autoComplete="off" />
              <RadioChoice label="Kind" options={kinds} {...entry.field('kind')} />
            </>
          )}
        </AddForm>
      )}
    </Sheet>
  );
}
