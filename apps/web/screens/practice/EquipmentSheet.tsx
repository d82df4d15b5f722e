import { z } from 'zod';
import { localDay } from '#libs/contracts/common';
import { newEquipment, type PracticeScreen } from '#libs/contracts/register';
import { DateField } from '../../design/DateField.js';
import { Empty } from '../../design/Empty.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { AddForm } from './AddForm.js';
import { Until } from './Until.js';
import { useAdd } from './queries.js';

const kinds = [
  { id: 'xray', name: 'X-ray machine or detector' },
  { id: 'distractionDevice', name: 'Distraction device' },
  { id: 'loadFrame', name: 'Load frame' },
  { id: 'monitor', name: 'Monitor for sedated dogs' },
] as const;
const checked = z.object({ checkedUntil: localDay });

export function EquipmentSheet({ screen, edits, today }: { screen: PracticeScreen; edits: boolean; today: string }) {
  const add = useAdd('/equipment');
  return (
    <Sheet title="Equipment">
      {screen.equipment.length === 0 ? (
        <Empty title="No equipment yet">A study is booked only when what it needs is here and checked on that day.</Empty>
      ) : (
        <Table
          caption="Equipment and its checks"
          rows={screen.equipment}
          rowKey={(e) => e.id}
          columns={[
            { head: 'Name', rowHead: true, cell: (e) => <>{e.name}<br /><span className="label">{kinds.find((k) => k.id === e.kind)?.name ?? e.kind}</span></> },
            { head: 'Checked', cell: (e) => <Until day={e.checkedUntil} today={today} /> },
            ...(edits ? [{ head: 'New check', cell: (e: PracticeScreen['equipment'][number]) => <CheckedAgain id={e.id} /> }] : []),
          ]}
        />
      )}
      {edits && (
        <AddForm opens="Add equipment" saves="Add this" schema={newEquipment} add={add}>
          {(entry) => (
            <>
              <TextField label="Name" {...entry.field('name')} autoComplete="off" />
              <Select label="Kind" options={kinds} {...entry.field('kind')} />
              <DateField label="Checked until" {...entry.field('checkedUntil')} help="The last day on which the check still counts." />
            </>
          )}
        </AddForm>
      )}
    </Sheet>
  );
}

function CheckedAgain({ id }: { id: string }) {
  const add = useAdd(`/equipment/${id}/checked`);
  return (
    <AddForm opens="Enter a check" saves="Save" schema={checked} add={add}>
      {(entry) => <DateField label="Checked until" {...entry.field('checkedUntil')} />}
    </AddForm>
  );
}
