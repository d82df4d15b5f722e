import { parseDate, type CalendarDate } from '@internationalized/date';
import { DateField as AriaDateField, DateInput, DateSegment, FieldError, I18nProvider, Label, Text } from 'react-aria-components';
import { languages } from '#libs/words/languages';
import { useLanguage } from './speech.js';
import type { FieldProps } from './Field.js';

/** A calendar day as `2026-11-25`; typed part by part, day first. */
export function DateField({ label, value, onChange, help, error }: FieldProps<string>) {
  return (
    <I18nProvider locale={languages[useLanguage()].dates}>
      <AriaDateField
        className="field"
        value={dayOrNull(value)}
        onChange={(day) => onChange(day?.toString())}
        isInvalid={error !== undefined}
        validationBehavior="aria"
        shouldForceLeadingZeros
      >
        <Label className="label">{label}</Label>
        <DateInput className="date">{(segment) => <DateSegment segment={segment} className="seg" />}</DateInput>
        {help && (
          <Text slot="description" className="label field-help">
            {help}
          </Text>
        )}
        <FieldError className="field-error">{error}</FieldError>
      </AriaDateField>
    </I18nProvider>
  );
}

function dayOrNull(day: string | undefined): CalendarDate | null {
  return day && /^\d{4}-\d{2}-\d{2}$/.test(day) ? parseDate(day) : null;
}
