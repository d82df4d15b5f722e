import { visitActions } from '#libs/contracts/actions/visit';
import { NumberField } from '../../../design/NumberField.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { TextField } from '../../../design/TextField.js';
import { useEntry, type Errors } from '../../../entry/use-entry.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { visitOf, type FormProps } from './form-props.js';

const gums = ['Pink', 'Pale', 'Blue', 'Grey', 'Not seen'].map((name) => ({ id: name.toLowerCase(), name }));
const measures = [
  { name: 'heartRate', label: 'Heart', unit: 'beats/min' },
  { name: 'breaths', label: 'Breathing', unit: 'breaths/min' },
  { name: 'spo2', label: 'Oxygen', unit: '%' },
  { name: 'temperature', label: 'Temperature', unit: '°C' },
] as const;

/** Big enough for a gloved hand; any measure may be left out. */
export function ReadingForm(props: FormProps) {
  const last = visitOf(props)?.readings.at(-1)?.values;
  const entry = useEntry(visitActions.recordReading, { device: 'desk' });
  const nothing = (): Errors => (measures.some((m) => entry.values[m.name] !== undefined) || entry.values.gums || entry.values.note ? {} : { heartRate: 'Write down at least one thing you saw.' });
  const colour = entry.field('gums');
  return (
    <ActionEntryForm entry={entry} props={props} size="tablet" label="Keep this reading" also={nothing}>
      <p className="label">No more than 5 minutes apart, until the recovery signs are signed.</p>
      <div className="meas">
        {measures.map((m, i) => (
          <NumberField key={m.name} label={last?.[m.name] === undefined ? m.label : `${m.label}, last ${String(last[m.name])}`} unit={m.unit} {...entry.field(m.name)} autoFocus={i === 0} />
        ))}
      </div>
      <RadioChoice label="Gums" size="tablet" options={gums} value={colour.value} onChange={colour.onChange} error={colour.error} />
      <TextField label="Note (may stay empty)" {...entry.field('note')} />
    </ActionEntryForm>
  );
}
