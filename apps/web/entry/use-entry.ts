import { useCallback, useState } from 'react';
import type { z } from 'zod';
import { isFailure } from '../api/failure.js';
import { plainIssue } from './plain-issue.js';
import { t } from '../words/t.js';

export type Errors = Record<string, string>;

/** What a person has entered so far, and what is still wrong with it by the contract. */
export function useEntry<S extends z.ZodObject>(schema: S, start: Partial<z.input<S>> = {}) {
  type Input = z.input<S>;
  const [values, setValues] = useState<Partial<Input>>(start);
  const [errors, setErrors] = useState<Errors>({});
  const [tries, setTries] = useState(0);

  const set = <K extends keyof Input>(name: K, value: Input[K] | undefined) => {
    setValues((v) => ({ ...v, [name]: value }));
    setErrors((e) => Object.fromEntries(Object.entries(e).filter(([path]) => path !== name && !path.startsWith(`${String(name)}.`))));
  };

  /** The server may see more than the page does. */
  const mark = useCallback((failure: unknown) => {
    if (!isFailure(failure) || !failure.body.fields) return;
    setErrors(Object.fromEntries(failure.body.fields.map((f) => [f.path.replace(/^input\./, ''), t.known(f.message)])));
    setTries((n) => n + 1);
  }, []);

  return {
    values,
    set,
    tries,
    error: (path: string): string | undefined => errors[path],
    errors,
    field: <K extends keyof Input & string>(name: K) => ({
      value: values[name] as Input[K] | undefined,
      error: errors[name],
      onChange: (value: Input[K] | undefined) => set(name, value),
    }),
    /** The checked entry, or null after marking what is missing; `also` is what no contract can say. */
    check: (also: Errors = {}): z.output<S> | null => {
      const checked = schema.safeParse(values, { error: plainIssue });
      const wrong = { ...(checked.success ? {} : firstOfEach(checked.error.issues)), ...also };
      setTries((n) => n + 1);
      setErrors(wrong);
      return checked.success && Object.keys(wrong).length === 0 ? checked.data : null;
    },
    mark,
  };
}

export type Entry<S extends z.ZodObject> = ReturnType<typeof useEntry<S>>;

function firstOfEach(issues: readonly z.core.$ZodIssue[]): Errors {
  const errors: Errors = {};
  for (const issue of issues) errors[issue.path.join('.')] ??= t.known(issue.message);
  return errors;
}
