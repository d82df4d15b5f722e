import { useState } from 'react';
import { visitActions } from '#libs/contracts/actions/visit';
import { Button } from '../../../design/Button.js';
import { NumberField } from '../../../design/NumberField.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { transponder } from '../../../design/format.js';
import { TextField } from '../../../design/TextField.js';
import { useEntry, type Errors } from '../../../entry/use-entry.js';
import { useTransponderReader } from '../../../entry/use-transponder-reader.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { visitOf, type FormProps } from './form-props.js';
import type { SaidOption } from '../../../design/Select.js';
import { Told } from '../../../words/Told.js';

const places: readonly SaidOption<'admission' | 'table'>[] = [
  { id: 'admission', name: 'At admission' },
  { id: 'table', name: 'At the table' },
];

/** Shows what was read; whether it is the dog of the order is for the server to say. */
export function ScanForm(props: FormProps) {
  const visit = visitOf(props);
  const entry = useEntry(visitActions.scanDog, { place: visit?.step === 'sedated' ? 'table' : 'admission', numbers: [] });
  const [typed, setTyped] = useState<string>();
  const numbers = entry.values.numbers ?? [];
  const add = (number: string) => {
    if (!numbers.includes(number) && numbers.length < 3) entry.set('numbers', [...numbers, number]);
    setTyped(undefined);
  };
  useTransponderReader(add);
  const dogs = props.screen.dog.identifiers.filter((i) => i.until === null).map((i) => i.shown);
  const pending = (): Errors => {
    if (numbers.length > 0) return {};
    return typed ? { numbers: t('Press “Add this number” first, or scan again.') } : entry.values.passes === undefined ? { passes: t('Nothing read: say how many times you passed over the dog.') } : {};
  };

  return (
    <ActionEntryForm entry={entry} props={props} size="tablet" also={pending}>
      <p>
        <Told text={t('Booked under **{numbers}**. Scan the dog now; the number read appears here.', { numbers: dogs.join(', ') || t('no number') })} strong="num" />
      </p>
      <RadioChoice label={t('Where')} size="tablet" options={places} {...entry.field('place')} />
      <div className="field" role="status">
        <span className="label">{t('Numbers read')}</span>
        {numbers.length === 0 ? (
          <span className="quiet">{t('none yet')}</span>
        ) : (
          <ul className="form-row">
            {numbers.map((n) => (
              <li key={n} className="acts">
                <b className="num">{transponder(n)}</b>
                <Button onPress={() => entry.set('numbers', numbers.filter((m) => m !== n))}>{t('Take out')}</Button>
              </li>
            ))}
          </ul>
        )}
      </div>
      <div className="form-row">
        <TextField label={t('Or type the number from the reader’s display')} value={typed} onChange={setTyped} inputMode="numeric" autoComplete="off" error={entry.error('numbers')} autoFocus />
        <Button onPress={() => typed && add(typed.replace(/\s/g, ''))}>{t('Add this number')}</Button>
      </div>
      <div className="form-row">
        <NumberField label={t('Passes over the dog (may stay empty)')} {...entry.field('passes')} />
        <NumberField label={t('Readers used (may stay empty)')} {...entry.field('readers')} />
      </div>
    </ActionEntryForm>
  );
}
