import { useEffect, type ReactNode } from 'react';
import type { z } from 'zod';
import { EntryForm } from '../../../entry/EntryForm.js';
import type { Entry, Errors } from '../../../entry/use-entry.js';
import type { FormProps } from './form-props.js';

/** The frame of a hand-made form: checks by the contract, sends, shows the answer. */
export function ActionEntryForm<S extends z.ZodObject>({ entry, props, also, size, label, children }: { entry: Entry<S>; props: FormProps; also?: () => Errors; size?: 'tablet'; label?: string; children: ReactNode }) {
  const { mark } = entry;
  // The server may see more than the contract can say; its words go to the fields they are about.
  const { failure } = props;
  useEffect(() => mark(failure), [mark, failure]);
  return (
    <EntryForm
      label={label ?? props.next.label}
      tries={entry.tries}
      errors={entry.errors}
      failure={props.failure}
      busy={props.busy}
      {...(size && { size })}
      onSubmit={() => {
        const input = entry.check(also?.());
        if (input) props.submit(input);
      }}
    >
      {children}
    </EntryForm>
  );
}
