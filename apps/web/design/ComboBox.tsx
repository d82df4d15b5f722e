import { Button, ComboBox as AriaComboBox, FieldError, Input, Label, Popover, Text } from 'react-aria-components';
import type { FieldProps } from './Field.js';
import { OptionList, type Option } from './Select.js';
import { t } from '../words/t.js';

/** For open vocabularies: suggests, and takes any other word. */
export function SuggestBox({ label, value, onChange, suggestions, help, error }: FieldProps<string> & { suggestions: readonly string[] }) {
  const options: Option[] = suggestions.map((s) => ({ id: s, name: s }));
  return (
    <AriaComboBox
      className="field"
      allowsCustomValue
      inputValue={value ?? ''}
      onInputChange={(text) => onChange(text === '' ? undefined : text)}
      onChange={(key) => key !== null && onChange(String(key))}
      defaultItems={options}
      isInvalid={error !== undefined}
      validationBehavior="aria"
    >
      <Label className="label">{label}</Label>
      <span className="combo">
        <Input />
        <Button className="btn" aria-label={t('Show suggestions')}>
          <span aria-hidden="true" className="chevron" />
        </Button>
      </span>
      {help && (
        <Text slot="description" className="label field-help">
          {help}
        </Text>
      )}
      <FieldError className="field-error">{error}</FieldError>
      <Popover className="popover">
        <OptionList options={options.filter((o) => o.name.toLowerCase().includes((value ?? '').toLowerCase()))} />
      </Popover>
    </AriaComboBox>
  );
}
