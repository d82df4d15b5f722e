import { newAccreditation, type PracticeScreen } from '#libs/contracts/register';
import { DateField } from '../../design/DateField.js';
import { CsvButton } from '../../design/CsvButton.js';
import { Empty } from '../../design/Empty.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { fullDay, list } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { Until } from './Until.js';
import { useAdd } from './queries.js';
import { HERE, Told } from '../../words/Told.js';

export function AccreditationSheet({ screen, edits, today }: { screen: PracticeScreen; edits: boolean; today: string }) {
  const add = useAdd('/accreditations');
  const needing = screen.protocols.filter((p) => p.needsAccreditation);
  return (
    <Sheet title={t('Who may take which views')}>
      <p className="small quiet">{needing.length > 0 ? t('Needs accreditation: {studies}. Without it the dog is referred to a practice that has it.', { studies: list([...new Set(needing.map((p) => p.name))]) }) : t('No study here needs accreditation.')}</p>
      {screen.accreditations.length === 0 ? (
        <Empty title={t('Nobody is accredited yet')}>{t('Enter who is, from when to when, and what shows it.')}</Empty>
      ) : (
        <Table
          caption={t('Accreditation of operators')}
          rows={screen.accreditations}
          rowKey={(a) => a.id}
          columns={[
            { head: t('Name'), rowHead: true, cell: (a) => a.staffName },
            { head: t('Study'), cell: (a) => a.protocolName },
            { head: t('Holds'), cell: (a) => <><Told text={t('from {day}, {until}', { day: fullDay(a.from), until: HERE })} here={<Until day={a.until} today={today} />} /></> },
            { head: t('Shown by'), cell: (a) => a.evidence },
          ]}
        />
      )}
      {screen.accreditations.length > 0 && <p className="after"><CsvButton name="accreditation.csv" of={t('Accreditation of operators')} head={['Name', 'Study', 'From', 'Until', 'Shown by']} rows={screen.accreditations.map((a) => [a.staffName, a.protocolName, a.from, a.until, a.evidence])} /></p>}
      {edits && (
        <AddForm opens={t('Enter an accreditation')} saves={t('Enter it')} schema={newAccreditation} add={add}>
          {(entry) => (
            <>
              <Select label={t('Who')} options={screen.staff.filter((s) => s.active).map((s) => ({ id: s.id, name: s.name }))} {...entry.field('staff')} />
              <Select label={t('Study')} options={byCode(needing)} {...entry.field('protocol')} />
              <div className="form-row">
                <DateField label={t('From')} {...entry.field('from')} />
                <DateField label={t('Until, that day included')} {...entry.field('until')} />
              </div>
              <TextField label={t('What shows it')} lines={2} {...entry.field('evidence')} help={t('The paper, its number and date, where it lies.')} />
            </>
          )}
        </AddForm>
      )}
    </Sheet>
  );
}

/** Accreditation is for a study, whichever version of its protocol is in force. */
const byCode = (protocols: PracticeScreen['protocols']) => protocols.filter((p, i, all) => all.findIndex((q) => q.code === p.code) === i).map((p) => ({ id: p.code, name: p.name }));
