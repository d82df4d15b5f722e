import { Button, FieldError, Label, ListBox, ListBoxItem, Popover, Select as AriaSelect, SelectValue, Text } from 'react-aria-components';
import type { FieldProps } from './Field.js';

export type Option<T extends string = string> = { id: T; name: string; hint?: string };

export function Select<T extends string>({ label, value, onChange, options, help, error, placeholder = 'Choose' }: FieldProps<T> & { options: readonly Option<T>[]; placeholder?: string }) {
  return (
    <AriaSelect className="field" value={value ?? null} onChange={(key) => onChange(options.find((o) => o.id === key)?.id)} isInvalid={error !== undefined} validationBehavior="aria" placeholder={placeholder}>
      <Label className="label">{label}</Label>
      <Button className="btn select" aria-invalid={error !== undefined || undefined}>
        <SelectValue />
        <span aria-hidden="true" className="chevron" />
      </Button>
      {help && (
        <Text slot="description" className="label field-help">
          {help}
        </Text>
      )}
      <FieldError className="field-error">{error}</FieldError>
      <Popover className="popover">
        <OptionList options={options} />
      </Popover>
    </AriaSelect>
  );
}

export function OptionList<T extends string>({ options }: { options: readonly Option<T>[] }) {
  return (
    <ListBox className="listbox" items={options} renderEmptyState={() => <p className="small quiet">There is nothing to choose from here.</p>}>
      {(o) => (
        <ListBoxItem id={o.id} textValue={o.name}>
          <Text slot="label">{o.name}</Text>
          {o.hint && (
            <Text slot="description" className="label">
              {o.hint}
            </Text>
          )}
        </ListBoxItem>
      )}
    </ListBox>
  );
}
