import { newStaff, type PracticeScreen } from '#libs/contracts/register';
import { roleNames, type Role } from '#libs/contracts/common';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { list } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { useAdd } from './queries.js';

const here: readonly Role[] = ['desk', 'nurse', 'radiographer', 'vet', 'manager'];

export function StaffSheet({ screen, edits }: { screen: PracticeScreen; edits: boolean }) {
  const add = useAdd('/staff');
  return (
    <Sheet title={t('Staff')}>
      <Table
        caption={t('People of the practice')}
        rows={screen.staff}
        rowKey={(s) => s.id}
        columns={[
          { head: t('Name'), rowHead: true, cell: (s) => s.name },
          { head: t('Does'), cell: (s) => list(s.roles.map((r) => t.known(roleNames[r]))) },
          { head: t('Signs in with'), cell: (s) => (s.active ? s.email : t('no longer here')) },
        ]}
      />
      {edits && (
        <AddForm opens={t('Add a person')} saves={t('Add this person')} schema={newStaff} add={add}>
          {(entry) => (
            <>
              <TextField label={t('Name')} {...entry.field('name')} autoComplete="off" />
              <TextField label={t('Mail address')} type="email" {...entry.field('email')} autoComplete="off" />
              <CheckboxGroup label={t('Does')} options={here.map((id) => ({ id, name: t.known(roleNames[id]) }))} {...entry.field('roles')} help={t('Who signs plans and results must be a veterinarian.')} />
              <TextField label={t('First password')} type="password" {...entry.field('password')} help={t('At least 10 signs. Hand it over in person.')} autoComplete="new-password" />
            </>
          )}
        </AddForm>
      )}
    </Sheet>
  );
}
