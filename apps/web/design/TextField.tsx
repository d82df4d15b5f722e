import { FieldError, Input, Label, Text, TextArea, TextField as AriaTextField } from 'react-aria-components';
import type { FieldProps } from './Field.js';

type Props = FieldProps<string> & {
  type?: 'text' | 'email' | 'password' | 'tel' | 'search' | 'time';
  lines?: number;
  unit?: string;
  name?: string;
  inputMode?: 'text' | 'decimal' | 'numeric' | 'tel';
  autoComplete?: string;
  autoFocus?: boolean;
  placeholder?: string;
};

/** An emptied field is an answer not given, never an empty answer. */
export function TextField({ label, value, onChange, help, error, lines, unit, placeholder, ...rest }: Props) {
  return (
    <AriaTextField {...rest} className="field" value={value ?? ''} onChange={(text) => onChange(text === '' ? undefined : text)} isInvalid={error !== undefined} validationBehavior="aria">
      <Label className="label">{label}</Label>
      <span className="with-unit">
        {lines ? <TextArea rows={lines} placeholder={placeholder} /> : <Input placeholder={placeholder} />}
        {unit && <span className="unit">{unit}</span>}
      </span>
      {help && (
        <Text slot="description" className="label field-help">
          {help}
        </Text>
      )}
      <FieldError className="field-error">{error}</FieldError>
    </AriaTextField>
  );
}
