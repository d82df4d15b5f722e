import { Button, FieldError, Label, ListBox, ListBoxItem, Popover, Select as AriaSelect, SelectValue, Text } from 'react-aria-components';
import type { FieldProps } from './Field.js';
import { t } from '../words/t.js';
import { useKnown } from './speech.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

export type Option<T extends string = string> = { id: T; name: string; hint?: string };
/** An option that the page names itself: the sentence, said where it is shown. */
export type SaidOption<T extends string = string> = Option<T> & { name: PageSentence; byLetter?: boolean };

export function Select<T extends string>({ label, value, onChange, options, help, error, placeholder = t('Choose') }: FieldProps<T> & { options: readonly Option<T>[]; placeholder?: string }) {
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
  const known = useKnown();
  return (
    <ListBox className="listbox" items={options} renderEmptyState={() => <p className="small quiet">{t('There is nothing to choose from here.')}</p>}>
      {(o) => (
        <ListBoxItem id={o.id} textValue={known(o.name)}>
          <Text slot="label">{known(o.name)}</Text>
          {o.hint && (
            <Text slot="description" className="label">
              {known(o.hint)}
            </Text>
          )}
        </ListBoxItem>
      )}
    </ListBox>
  );
}
