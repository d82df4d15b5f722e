import { FieldError, Label, Radio, RadioGroup, Text } from 'react-aria-components';
import type { Answer } from '#libs/contracts/common';
import { lettersOf } from './answer-letters.js';
import type { FieldProps } from './Field.js';
import { useKnown } from './speech.js';
import type { Option, SaidOption } from './Select.js';

export type RadioOption<T extends string> = Option<T> & { byLetter?: boolean; dontKnow?: boolean };

/** A few answers side by side; the letter of an answer chooses it while the group has the focus. */
export function RadioChoice<T extends string>({ label, labelHidden, value, onChange, options, help, error, size }: FieldProps<T> & { options: readonly RadioOption<T>[]; labelHidden?: boolean; size?: 'tablet' }) {
  const known = useKnown();
  const byLetter = options.filter((o) => o.byLetter);
  const letters = lettersOf(byLetter.map((o) => known(o.name)));
  return (
    <RadioGroup className="field" value={value ?? null} onChange={(chosen) => onChange(options.find((o) => o.id === chosen)?.id)} isInvalid={error !== undefined} validationBehavior="aria" orientation="horizontal">
      <Label className={labelHidden ? 'vh' : 'label'}>{label}</Label>
      <div
        className={size === 'tablet' ? 'pick pick-tablet' : 'pick'}
        onKeyDown={(e) => {
          const chosen = !e.ctrlKey && !e.metaKey && !e.altKey && byLetter[letters.indexOf(e.key.toLocaleUpperCase())];
          if (!chosen) return;
          onChange(chosen.id);
          e.currentTarget.querySelector<HTMLInputElement>(`input[value="${CSS.escape(chosen.id)}"]`)?.focus();
        }}
      >
        {options.map((o) => (
          <Radio key={o.id} value={o.id} className={o.dontKnow ? 'dk' : ''}>
            {known(o.name)}
          </Radio>
        ))}
      </div>
      {help && (
        <Text slot="description" className="label field-help">
          {help}
        </Text>
      )}
      <FieldError className="field-error">{error}</FieldError>
    </RadioGroup>
  );
}

export const yesNo: readonly SaidOption<'yes' | 'no'>[] = [
  { id: 'yes', name: 'Yes', byLetter: true },
  { id: 'no', name: 'No', byLetter: true },
];
export const yesNoUnknown: readonly (SaidOption<Answer> & { dontKnow?: boolean })[] = [...yesNo, { id: 'unknown', name: 'Don’t know', byLetter: true, dontKnow: true }];
