import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { z } from 'zod';
import { mergeDogs, type Twins } from '#libs/contracts/people';
import { useMergeDogs, useTwins } from '../../api/register.js';
import { Button } from '../../design/Button.js';
import { Empty, Loading } from '../../design/Empty.js';
import { fullDay, plural } from '../../design/format.js';
import { NotShown, Notice } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { hasRole, useMe } from '../../shell/me.js';

type Pair = Twins['rows'][number];
type Twin = Pair['dogs'][number];

/** Entries that look like one dog. Nothing is merged but by a person with a reason. */
export function TwinsScreen() {
  const { data, error } = useTwins();
  if (!data) return error ? <NotShown title="Entered twice?" error={error} /> : <Loading what="the dogs" />;
  return (
    <>
      <div className="head">
        <h1>Entered twice?</h1>
        <p>The same number, or the same name and birth. Merging moves orders, names, numbers and people to one entry. No paper changes its number, and both animal numbers find the dog.</p>
      </div>
      {data.rows.length === 0 && (
        <Sheet title="Dogs">
          <Empty title="No two entries look like one dog" />
        </Sheet>
      )}
      {data.rows.map((pair) => (
        <PairSheet key={pair.dogs.map((d) => d.id).join()} pair={pair} />
      ))}
    </>
  );
}

function PairSheet({ pair }: { pair: Pair }) {
  const me = useMe();
  const [keep, setKeep] = useState<Twin>();
  const merges = hasRole(me, 'desk') || hasRole(me, 'manager');
  const gone = pair.dogs.find((d) => d.id !== keep?.id);
  return (
    <Sheet title={pair.why === 'number' ? 'The same number' : 'The same name and birth'} className="tasks">
      <div className="cols two">
        {pair.dogs.map((d) => (
          <div key={d.id}>
            <h3>
              <Link to="/dogs/$dog" params={{ dog: d.id }}>
                {d.name}
              </Link>
            </h3>
            <p>
              {d.breed}, {d.sex}, born {fullDay(d.born)}, {d.transponder ? <span className="num">{d.transponder}</span> : 'no number'}
            </p>
            <p className="small quiet">
              Animal number {d.animalId}. {d.owner}. {plural(d.orders, 'order', 'orders')}.
            </p>
            {merges && !keep && <Button onPress={() => setKeep(d)}>Keep this entry</Button>}
          </div>
        ))}
      </div>
      {keep && gone && <MergeForm keep={keep} gone={gone} close={() => setKeep(undefined)} />}
    </Sheet>
  );
}

const reason = z.object({ why: mergeDogs.shape.why });

function MergeForm({ keep, gone, close }: { keep: Twin; gone: Twin; close: () => void }) {
  const merge = useMergeDogs(keep.id);
  const entry = useEntry(reason);
  const submit = () => {
    const body = entry.check();
    if (body) merge.mutate({ ...body, gone: gone.id }, { onError: entry.mark });
  };
  return (
    <EntryForm label={`Merge ${gone.animalId} into ${keep.animalId}`} tries={entry.tries} errors={entry.errors} failure={merge.error} busy={merge.isPending} onSubmit={submit} beside={<Button onPress={close}>Leave it</Button>}>
      <Notice>Two dogs in one record cannot be told apart again. Scan the dog first if you are not certain.</Notice>
      <TextField label="How you know that this is one dog" {...entry.field('why')} autoFocus />
    </EntryForm>
  );
}
