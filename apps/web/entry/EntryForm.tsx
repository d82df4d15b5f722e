import { useEffect, useRef, type ReactNode } from 'react';
import { Button } from '../design/Button.js';
import { ErrorBar } from '../design/Notice.js';
import { t } from '../words/t.js';
import { Told } from '../words/Told.js';

type Props = {
  label: string;
  onSubmit: () => void;
  /** Grows with each try, so that the focus goes to what is missing each time. */
  tries: number;
  errors: Record<string, string>;
  failure: unknown;
  busy?: boolean;
  size?: 'tablet';
  kind?: 'ink' | 'elder';
  beside?: ReactNode;
  children: ReactNode;
};

/** A form whose button never greys out: pressed too early, it says what is missing and goes there. */
export function EntryForm({ label, onSubmit, tries, errors, failure, busy, size, kind = 'ink', beside, children }: Props) {
  const form = useRef<HTMLFormElement>(null);
  const missing = Object.keys(errors).length;
  // Only a new try moves the focus; typing must not. Nothing wrong, nothing marked: then it stays where it is.
  useEffect(() => {
    if (tries > 0) focusFirstWrong(form.current);
  }, [tries]);
  return (
    <form
      ref={form}
      className="form"
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        if (!busy) onSubmit();
      }}
    >
      {children}
      <ErrorBar error={failure}>
        <p className="small">{t('What you entered is kept.')}</p>
      </ErrorBar>
      <p className="held-words" role="status">
        {missing > 0 && (
          <Told text={t('**{missing, plural, one {One thing missing} other {# things missing}}:** see the marked {missing, plural, one {field} other {fields}}.', { missing })} />
        )}
      </p>
      <div className="acts">
        <Button type="submit" kind={kind} size={size}>
          {busy ? t('Sending …') : label}
        </Button>
        {beside}
      </div>
    </form>
  );
}

export function focusFirstWrong(form: HTMLElement | null) {
  const wrong = form?.querySelector<HTMLElement>('[data-invalid]');
  const target = wrong?.matches('input, textarea, button') ? wrong : wrong?.querySelector<HTMLElement>('input:not([type=hidden]), textarea, button, [role=spinbutton], [tabindex="0"]');
  (target ?? wrong)?.focus();
  wrong?.scrollIntoView({ block: 'nearest' });
}
