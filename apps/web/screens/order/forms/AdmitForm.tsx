import { visitActions } from '#libs/contracts/actions/visit';
import { Checkbox } from '../../../design/Checkboxes.js';
import { NumberField } from '../../../design/NumberField.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { TextField } from '../../../design/TextField.js';
import { useEntry } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import type { FormProps } from './form-props.js';

const conditions = ['1', '2', '3', '4', '5', '6', '7', '8', '9'].map((id) => ({ id, name: id, key: id }));

export function AdmitForm(props: FormProps) {
  const entry = useEntry(visitActions.admit);
  const condition = entry.field('bodyCondition');
  return (
    <ActionEntryForm entry={entry} props={props} size="tablet">
      <div className="form-row">
        <NumberField label={t('Weight today')} unit={t('kg')} {...entry.field('weightKg')} autoFocus />
        <NumberField label={t('Hours without food')} unit={t('h')} {...entry.field('fastedHours')} />
      </div>
      {(entry.error('weightKg') !== undefined || entry.values.weighedAgain) && <Checkbox label={t('I weighed again, and this weight is right')} {...entry.field('weighedAgain')} />}
      <RadioChoice label={t('Body condition, 1 very thin to 9 very fat')} options={conditions} value={condition.value === undefined ? undefined : String(condition.value)} onChange={(v) => condition.onChange(v === undefined ? undefined : Number(v))} error={condition.error} />
      <TextField label={t('Medicines today (may stay empty)')} {...entry.field('medicines')} />
    </ActionEntryForm>
  );
}
