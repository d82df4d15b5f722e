import { z } from 'zod';
import { localDay } from '#libs/contracts/common';
import { detectorSize } from '#libs/contracts/film-size';
import { newEquipment, type PracticeScreen } from '#libs/contracts/register';
import { DateField } from '../../design/DateField.js';
import { CsvButton } from '../../design/CsvButton.js';
import { Empty } from '../../design/Empty.js';
import { NumberField } from '../../design/NumberField.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { Until } from './Until.js';
import { useAdd } from './queries.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

const kinds = [
  { id: 'xray', name: 'X-ray machine or detector' },
  { id: 'distractionDevice', name: 'Distraction device' },
  { id: 'loadFrame', name: 'Load frame' },
  { id: 'monitor', name: 'Monitor for sedated dogs' },
] as const satisfies readonly { id: string; name: PageSentence }[];
const kindWords = (kind: string) => named(kinds).find((k) => k.id === kind)?.name ?? kind;
const checked = z.object({ checkedUntil: localDay });

export function EquipmentSheet({ screen, edits, today }: { screen: PracticeScreen; edits: boolean; today: string }) {
  const add = useAdd('/equipment');
  return (
    <Sheet title={t('Equipment')}>
      {screen.equipment.length === 0 ? (
        <Empty title={t('No equipment yet')}>{t('A study is booked only when what it needs is here and checked on that day.')}</Empty>
      ) : (
        <Table
          caption={t('Equipment and its checks')}
          rows={screen.equipment}
          rowKey={(e) => e.id}
          columns={[
            { head: t('Name'), rowHead: true, cell: (e) => <>{e.name}<br /><span className="label">{kindWords(e.kind)}</span></> },
            { head: t('Checked'), cell: (e) => <Until day={e.checkedUntil} today={today} /> },
            { head: t('Pixels'), cell: (e) => e.kind === 'xray' && <Pixels device={e} edits={edits} /> },
            ...(edits ? [{ head: t('New check'), cell: (e: PracticeScreen['equipment'][number]) => <CheckedAgain id={e.id} /> }] : []),
          ]}
        />
      )}
      {screen.equipment.length > 0 && <p className="after"><CsvButton name="equipment.csv" of={t('Equipment')} head={['Name', 'Kind', 'Checked until']} rows={screen.equipment.map((e) => [e.name, kindWords(e.kind), e.checkedUntil])} /></p>}
      {edits && (
        <AddForm opens={t('Add equipment')} saves={t('Add this')} schema={newEquipment} add={add}>
          {(entry) => (
            <>
              <TextField label={t('Name')} {...entry.field('name')} autoComplete="off" />
              <Select label={t('Kind')} options={named(kinds)} {...entry.field('kind')} />
              <DateField label={t('Checked until')} {...entry.field('checkedUntil')} help={t('The last day on which the check still counts.')} />
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
    <AddForm opens={t('Enter a check')} saves={t('Save')} schema={checked} add={add}>
      {(entry) => <DateField label={t('Checked until')} {...entry.field('checkedUntil')} />}
    </AddForm>
  );
}

/** What the maker says of a detector; needed for films that are exported as PNG or JPEG. */
function Pixels({ device, edits }: { device: PracticeScreen['equipment'][number]; edits: boolean }) {
  const add = useAdd(`/equipment/${device.id}/pixels`);
  const { pixels } = device;
  return (
    <>
      {pixels?.mm ? (
        <>
          <span className="val">{t('{mm, number, ::.####} mm', { mm: pixels.mm })}</span>
          <br />
          <span className="label">{t('Said by {name}, {day}', { name: pixels.by, day: fullDay(pixels.on) })}</span>
        </>
      ) : (
        <span className="label">{t('Size not known')}</span>
      )}
      {edits && (
        <AddForm opens={t('Enter the size')} saves={t('Save')} schema={detectorSize} start={{ pixelMm: pixels?.mm ?? null }} add={add}>
          {(entry) => <NumberField label={t('Size of a pixel')} unit="mm" value={entry.values.pixelMm ?? undefined} onChange={(mm) => entry.set('pixelMm', mm ?? null)} error={entry.error('pixelMm')} help={t('From one pixel to the next, both ways, such as 0.139. It stands in the detector’s manual or on its label; else ask the service engineer. Films exported as PNG or JPEG pixel for pixel then have a size. Leave it empty to take a size back; films that have it keep it.')} />}
        </AddForm>
      )}
    </>
  );
}
