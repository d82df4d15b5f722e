import { newStaff, type PracticeScreen } from '#libs/contracts/register';
import { roleNames, type Role } from '#libs/contracts/common';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { list } from '../../design/format.js';
import { AddForm } from './AddForm.js';
import { useAdd } from './queries.js';

const here: readonly Role[] = ['desk', 'nurse', 'radiographer', 'vet', 'manager'];

export function StaffSheet({ screen, edits }: { screen: PracticeScreen; edits: boolean }) {
  const add = useAdd('/staff');
  return (
    <Sheet title="Staff">
      <Table
        caption="People of the practice"
        rows={screen.staff}
        rowKey={(s) => s.id}
        columns={[
          { head: 'Name', rowHead: true, cell: (s) => s.name },
          { head: 'Does', cell: (s) => list(s.roles.map((r) => roleNames[r])) },
          { head: 'Signs in with', cell: (s) => (s.active ? s.email : 'no longer here') },
        ]}
      />
      {edits && (
        <AddForm opens="Add a person" saves="Add this person" schema={newStaff} add={add}>
          {(entry) => (
            <>
              <TextField label="Name" {...entry.field('name')} autoComplete="off" />
              <TextField label="Mail address" type="email" {...entry.field('email')} autoComplete="off" />
              <CheckboxGroup label="Does" options={here.map((id) => ({ id, name: roleNames[id] }))} {...entry.field('roles')} help="Who signs plans and results must be a veterinarian." />
              <TextField label="First password" type="password" {...entry.field('password')} help="At least 10 signs. Hand it over in person." autoComplete="new-password" />
            </>
          )}
        </AddForm>
      )}
    </Sheet>
  );
}
