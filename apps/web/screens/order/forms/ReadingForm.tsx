import { visitActions } from '#libs/contracts/actions/visit';
import { NumberField } from '../../../design/NumberField.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { TextField } from '../../../design/TextField.js';
import { useEntry, type Errors } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { visitOf, type FormProps } from './form-props.js';
import { gums, measures } from '../../watch/measures.js';
import { plain } from '../../../design/format.js';

/** Big enough for a gloved hand; any measure may be left out. */
export function ReadingForm(props: FormProps) {
  const last = visitOf(props)?.readings.at(-1)?.values;
  const entry = useEntry(visitActions.recordReading, { device: 'desk' });
  const nothing = (): Errors => (measures.some((m) => entry.values[m.name] !== undefined) || entry.values.gums || entry.values.note ? {} : { heartRate: t('Write down at least one thing you saw.') });
  const colour = entry.field('gums');
  return (
    <ActionEntryForm entry={entry} props={props} size="tablet" label={t('Keep this reading')} also={nothing}>
      <p className="label">{t('No more than 5 minutes apart, until the recovery signs are signed.')}</p>
      <div className="meas">
        {measures.map((m, i) => (
          <NumberField key={m.name} label={typeof last?.[m.name] === 'number' ? t('{label}, last {value}', { label: t(m.label), value: plain(last[m.name] as number) }) : t(m.label)} unit={t(m.unit)} {...entry.field(m.name)} autoFocus={i === 0} />
        ))}
      </div>
      <RadioChoice label={t('Gums')} size="tablet" options={gums} value={colour.value} onChange={colour.onChange} error={colour.error} />
      <TextField label={t('Note (may stay empty)')} {...entry.field('note')} />
    </ActionEntryForm>
  );
}
