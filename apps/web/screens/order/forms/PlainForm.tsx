import { useMemo } from 'react';
import { actionInputs, type ActionName } from '#libs/contracts/actions/all';
import type { OrderScreen } from '#libs/contracts/screens/order';
import type { z } from 'zod';
import { EntryForm } from '../../../entry/EntryForm.js';
import { useEntry } from '../../../entry/use-entry.js';
import { fieldsOf, type FieldSpec } from './field-spec.js';
import { choicesFor, type FormProps } from './form-props.js';
import { SpecField } from './SpecField.js';

/** Any action without a form of its own, drawn from its contract. */
export function PlainForm({ action, ...props }: FormProps & { action: ActionName }) {
  const specs = useMemo(() => fieldsOf(action), [action]);
  const entry = useEntry<z.ZodObject>(actionInputs[action], { ...startOf(specs, props.screen), ...props.start });
  return (
    <EntryForm
      label={props.next.label}
      tries={entry.tries}
      errors={entry.errors}
      failure={props.failure}
      busy={props.busy}
      onSubmit={() => {
        const input = entry.check();
        if (input) props.submit(input);
      }}
    >
      {specs.map((spec) => (
        <SpecField key={spec.name} spec={spec} screen={props.screen} value={entry.values[spec.name]} onChange={(v) => entry.set(spec.name, v)} error={entry.error(spec.name)} />
      ))}
    </EntryForm>
  );
}

/** Where there is only one to choose, it is chosen. */
function startOf(specs: FieldSpec[], screen: OrderScreen): Record<string, unknown> {
  return Object.fromEntries(
    specs.flatMap((s) => {
      if (!s.required || (s.kind !== 'pickOne' && s.kind !== 'pickSome')) return [];
      const [only, ...more] = choicesFor(screen, s.pick);
      return only && more.length === 0 ? [[s.name, s.kind === 'pickOne' ? only.id : [only.id]]] : [];
    }),
  );
}
