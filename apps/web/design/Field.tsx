import { useId, type ReactNode } from 'react';

export type FieldProps<T> = {
  label: string;
  value: T | undefined;
  onChange: (value: T | undefined) => void;
  help?: string;
  error?: string;
};

/** Label, help and what is wrong, around any control that is not a text field. */
export function Field({ label, help, error, children }: { label: string; help?: string; error?: string; children: (ids: { label: string; help: string | undefined }) => ReactNode }) {
  const id = useId();
  const helpId = help || error ? `${id}-help` : undefined;
  return (
    <div className="field" data-invalid={error ? '' : undefined}>
      <span className="label" id={id}>
        {label}
      </span>
      {children({ label: id, help: helpId })}
      {helpId && (
        <span id={helpId}>
          <FieldNotes help={help} error={error} />
        </span>
      )}
    </div>
  );
}

export function FieldNotes({ help, error }: { help: string | undefined; error: string | undefined }) {
  return (
    <>
      {help && <span className="label field-help">{help}</span>}
      {error && <span className="field-error">{error}</span>}
    </>
  );
}
