import { useState, type ReactNode } from 'react';
import type { z } from 'zod';
import { Button } from '../../design/Button.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry, type Entry } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';
import { useOnRequests } from './queries.js';

type Props<S extends z.ZodObject> = { path: string; opens: string; saves: string; schema: S; start?: Partial<z.input<S>>; kind?: 'ink' | 'plain'; children: (entry: Entry<S>) => ReactNode };

/** One thing that is done about a request: a button, and the few words that it needs. */
export function WordsForm<S extends z.ZodObject>(props: Props<S>) {
  const [open, setOpen] = useState(false);
  if (!open) return <Button kind={props.kind ?? 'plain'} onPress={() => setOpen(true)}>{props.opens}</Button>;
  return <Opened {...props} onClose={() => setOpen(false)} />;
}

function Opened<S extends z.ZodObject>({ path, saves, schema, start, children, onClose }: Props<S> & { onClose: () => void }) {
  const entry = useEntry(schema, start);
  const on = useOnRequests(path);
  const submit = () => {
    const body = entry.check();
    if (body) on.mutate(body, { onSuccess: onClose, onError: entry.mark });
  };
  return (
    <EntryForm label={saves} onSubmit={submit} tries={entry.tries} errors={entry.errors} failure={on.error} busy={on.isPending} beside={<Button onPress={onClose}>{t('Leave it')}</Button>}>
      {children(entry)}
    </EntryForm>
  );
}
