import { useState, type ReactNode } from 'react';
import type { z } from 'zod';
import { Button } from '../../design/Button.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry, type Entry } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';

type Props<S extends z.ZodObject> = {
  /** What the button says before the form opens. */
  opens: string;
  saves: string;
  schema: S;
  start?: Partial<z.input<S>>;
  add: { mutate: (body: z.output<S>, then: { onSuccess: () => void; onError: (error: unknown) => void }) => void; error: unknown; isPending: boolean };
  children: (entry: Entry<S>) => ReactNode;
};

/** A button that opens the form for one more; the form closes when the server has stored it. */
export function AddForm<S extends z.ZodObject>(props: Props<S>) {
  const [open, setOpen] = useState(false);
  return open ? (
    <Opened {...props} onClose={() => setOpen(false)} />
  ) : (
    <div className="acts adding">
      <Button onPress={() => setOpen(true)}>{props.opens}</Button>
    </div>
  );
}

function Opened<S extends z.ZodObject>({ saves, schema, start, add, children, onClose }: Props<S> & { onClose: () => void }) {
  const entry = useEntry(schema, start);
  const submit = () => {
    const body = entry.check();
    if (body) add.mutate(body, { onSuccess: onClose, onError: entry.mark });
  };
  return (
    <div className="adding">
      <EntryForm label={saves} onSubmit={submit} tries={entry.tries} errors={entry.errors} failure={add.error} busy={add.isPending} beside={<Button onPress={onClose}>{t('Leave it')}</Button>}>
        {children(entry)}
      </EntryForm>
    </div>
  );
}
