import { newAccreditation, type PracticeScreen } from '#libs/contracts/register';
import { DateField } from '../../design/DateField.js';
import { Empty } from '../../design/Empty.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { fullDay, list } from '../../design/format.js';
import { AddForm } from './AddForm.js';
import { Until } from './Until.js';
import { useAdd } from './queries.js';

export function AccreditationSheet({ screen, edits, today }: { screen: PracticeScreen; edits: boolean; today: string }) {
  const add = useAdd('/accreditations');
  const needing = screen.protocols.filter((p) => p.needsAccreditation);
  return (
    <Sheet title="Who may take which views">
      <p className="small quiet">{needing.length > 0 ? `Needs accreditation: ${list([...new Set(needing.map((p) => p.name))])}. Without it the dog is referred to a practice that has it.` : 'No study here needs accreditation.'}</p>
      {screen.accreditations.length === 0 ? (
        <Empty title="Nobody is accredited yet">Enter who is, from when to when, and what shows it.</Empty>
      ) : (
        <Table
          caption="Accreditation of operators"
          rows={screen.accreditations}
          rowKey={(a) => a.id}
          columns={[
            { head: 'Name', rowHead: true, cell: (a) => a.staffName },
            { head: 'Study', cell: (a) => a.protocolName },
            { head: 'Holds', cell: (a) => <>from {fullDay(a.from)}, <Until day={a.until} today={today} /></> },
            { head: 'Shown by', cell: (a) => a.evidence },
          ]}
        />
      )}
      {edits && (
        <AddForm opens="Enter an accreditation" saves="Enter it" schema={newAccreditation} add={add}>
          {(entry) => (
            <>
              <Select label="Who" options={screen.staff.filter((s) => s.active).map((s) => ({ id: s.id, name: s.name }))} {...entry.field('staff')} />
              <Select label="Study" options={byCode(needing)} {...entry.field('protocol')} />
              <div className="form-row">
                <DateField label="From" {...entry.field('from')} />
                <DateField label="Until, that day included" {...entry.field('until')} />
              </div>
              <TextField label="What shows it" lines={2} {...entry.field('evidence')} help="The paper, its number and date, where it lies." />
            </>
          )}
        </AddForm>
      )}
    </Sheet>
  );
}

/** Accreditation is for a study, whichever version of its protocol is in force. */
const byCode = (protocols: PracticeScreen['protocols']) => protocols.filter((p, i, all) => all.findIndex((q) => q.code === p.code) === i).map((p) => ({ id: p.code, name: p.name }));
