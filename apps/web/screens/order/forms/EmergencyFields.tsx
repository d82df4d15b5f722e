import type { sedationConsent } from '#libs/contracts/actions/visit';
import type { z } from 'zod';
import { NumberField } from '../../../design/NumberField.js';
import { RadioChoice, yesNo } from '../../../design/RadioChoice.js';
import { TextField } from '../../../design/TextField.js';
import { t } from '../../../words/t.js';
import { LinesField } from './LinesField.js';

type Emergency = NonNullable<z.input<typeof sedationConsent>['emergency']>;

/** Asked before, because nobody can be asked well in the moment. */
export function EmergencyFields({ value, onChange, error }: { value: Partial<Emergency> | undefined; onChange: (value: Emergency | undefined) => void; error: (path: string) => string | undefined }) {
  const set = (part: Partial<Emergency>) => {
    const next = { ...value, ...part };
    // Emptied again means: nothing said about emergencies. What is half filled is for the check to name.
    onChange(Object.values(next).some((v) => v !== undefined) ? (next as Emergency) : undefined);
  };
  return (
    <fieldset className="form">
      <legend>
        <b>{t('Should there be an emergency')}</b>
      </legend>
      <RadioChoice label={t('Try to revive')} options={yesNo} value={value?.resuscitate} onChange={(resuscitate) => set({ resuscitate })} error={error('emergency.resuscitate')} />
      <div className="form-row">
        <NumberField label={t('Spending limit without asking')} value={value?.limitMinor === undefined ? undefined : value.limitMinor / 100} onChange={(n) => set({ limitMinor: n === undefined ? undefined : Math.round(n * 100) })} error={error('emergency.limitMinor')} />
        <TextField label={t('Number answered today')} type="tel" value={value?.number} onChange={(number) => set({ number })} error={error('emergency.number')} />
      </div>
      <LinesField label={t('Who may collect the dog')} value={value?.collectors} onChange={(collectors) => set({ collectors })} error={error('emergency.collectors')} />
    </fieldset>
  );
}
