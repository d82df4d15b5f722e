import { visitActions } from '#libs/contracts/actions/visit';
import { NumberField } from '../../../design/NumberField.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { TextField } from '../../../design/TextField.js';
import { useEntry } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import type { FormProps } from './form-props.js';
import { optionWords } from './option-words.js';

const events = () => (['drawn', 'given', 'discarded', 'reversal'] as const).map((id) => ({ id, name: optionWords(id) }));

/** A record of what was done; the plan says what was meant. */
export function DrugForm(props: FormProps) {
  const entry = useEntry(visitActions.recordDrug);
  return (
    <ActionEntryForm entry={entry} props={props} size="tablet">
      <RadioChoice label={t('What')} size="tablet" options={events()} {...entry.field('event')} />
      <div className="form-row">
        <TextField label={t('Drug, as on the bottle')} {...entry.field('drug')} autoComplete="off" />
        <TextField label={t('Batch')} {...entry.field('batch')} autoComplete="off" />
        <NumberField label={t('Volume')} unit={t('mL')} {...entry.field('amountMl')} />
        <TextField label={t('Route (may stay empty)')} {...entry.field('route')} autoComplete="off" />
      </div>
    </ActionEntryForm>
  );
}
