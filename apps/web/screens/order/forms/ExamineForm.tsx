import { Label, Radio, RadioGroup } from 'react-aria-components';
import { visitActions } from '#libs/contracts/actions/visit';
import { TextField } from '../../../design/TextField.js';
import { useEntry, type Errors } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import type { FormProps } from './form-props.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

// The physical-status classes of anaesthesia, as commonly worded in the trade.
const classes: readonly { n: number; name: string; words: PageSentence }[] = [
  { n: 1, name: 'I', words: 'Healthy' },
  { n: 2, name: 'II', words: 'Mild disease of the whole body, without limits in daily life' },
  { n: 3, name: 'III', words: 'Severe disease of the whole body; needs your signed reason' },
  { n: 4, name: 'IV', words: 'Severe disease that is a constant threat to life' },
  { n: 5, name: 'V', words: 'Not expected to live without the operation' },
];

export function ExamineForm(props: FormProps) {
  const entry = useEntry(visitActions.examine);
  const status = entry.field('statusClass');
  return (
    <ActionEntryForm entry={entry} props={props} size="tablet" also={(): Errors => (status.value === undefined ? { statusClass: t('Choose the class.') } : status.value === 3 && !entry.values.reason ? { reason: t('Class III needs your reason.') } : {})}>
      <TextField label={t('Heart, lungs, temperature, findings')} lines={3} {...entry.field('findings')} />
      <RadioGroup className="field" value={status.value === undefined ? null : String(status.value)} onChange={(v) => status.onChange(Number(v))} isInvalid={status.error !== undefined} validationBehavior="aria">
        <Label className="label">{t('Physical status class')}</Label>
        <div className="classes">
          {classes.map((c) => (
            <Radio key={c.n} value={String(c.n)}>
              <b>{c.name}</b>
              <span>{t(c.words)}</span>
            </Radio>
          ))}
        </div>
        {status.error && <span className="field-error">{status.error}</span>}
      </RadioGroup>
      {(status.value ?? 0) >= 3 && <TextField label={t('Reason')} lines={2} {...entry.field('reason')} />}
    </ActionEntryForm>
  );
}
