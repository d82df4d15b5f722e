import { Checkbox as AriaCheckbox, CheckboxGroup as AriaGroup, FieldError, Label, Text } from 'react-aria-components';
import type { FieldProps } from './Field.js';
import type { Option } from './Select.js';
import { t } from '../words/t.js';
import { useKnown } from './speech.js';

export function CheckboxGroup<T extends string>({ label, value, onChange, options, help, error, size }: FieldProps<T[]> & { options: readonly Option<T>[]; size?: 'tablet' }) {
  const known = useKnown();
  return (
    <AriaGroup className="field" value={value ?? []} onChange={(chosen) => onChange(options.filter((o) => chosen.includes(o.id)).map((o) => o.id))} isInvalid={error !== undefined} validationBehavior="aria">
      <Label className="label">{label}</Label>
      <div className={size === 'tablet' ? 'checks checks-tablet' : 'checks'}>
        {options.map((o) => (
          <AriaCheckbox key={o.id} value={o.id} className="check">
            <span className="box" aria-hidden="true" />
            <span>
              {known(o.name)}
              {o.hint && <span className="label"> {known(o.hint)}</span>}
            </span>
          </AriaCheckbox>
        ))}
        {options.length === 0 && <p className="small quiet">{t('There is nothing to choose from here.')}</p>}
      </div>
      {help && (
        <Text slot="description" className="label field-help">
          {help}
        </Text>
      )}
      <FieldError className="field-error">{error}</FieldError>
    </AriaGroup>
  );
}

export function Checkbox({ label, value, onChange, error }: FieldProps<boolean>) {
  return (
    <div className="field" data-invalid={error ? '' : undefined}>
      <AriaCheckbox className="check" isSelected={value ?? false} onChange={onChange} isInvalid={error !== undefined} validationBehavior="aria">
        <span className="box" aria-hidden="true" />
        <span>{label}</span>
      </AriaCheckbox>
      {error && <span className="field-error">{error}</span>}
    </div>
  );
}
