import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { z } from 'zod';
import { mergeDogs, type Twins } from '#libs/contracts/people';
import { useMergeDogs, useTwins } from '../../api/register.js';
import { Button } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { fullDay } from '../../design/format.js';
import { NotShown, Notice } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { hasRole, useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';

type Pair = Twins['rows'][number];
type Twin = Pair['dogs'][number];

/** Entries that look like one dog. Nothing is merged but by a person with a reason. */
export function TwinsScreen() {
  const { page = 1 } = useSearch({ from: '/inside/dogs/twins' });
  const navigate = useNavigate({ from: '/dogs/twins' });
  const { data, error } = useTwins(page);
  if (!data) return error ? <NotShown title={t('Entered twice?')} error={error} /> : <Loading what={t('the dogs')} />;
  return (
    <>
      <div className="head">
        <h1>{t('Entered twice?')}</h1>
        <p>{t('The same number, or the same name and birth. Merging moves orders, names, numbers and people to one entry. No paper changes its number, and both animal numbers find the dog.')}</p>
        <div className="acts">
          <CsvLink path="/dog-twins.csv" />
        </div>
      </div>
      {data.rows.length === 0 && (
        <Sheet title={t('Dogs')}>
          <Empty title={t('No two entries look like one dog')} />
        </Sheet>
      )}
      {data.rows.map((pair) => (
        <PairSheet key={pair.dogs.map((d) => d.id).join()} pair={pair} />
      ))}
      <Pager page={page} more={data.more} onPage={(to) => void navigate({ search: to > 1 ? { page: to } : {} })} />
    </>
  );
}

function PairSheet({ pair }: { pair: Pair }) {
  const me = useMe();
  const [keep, setKeep] = useState<Twin>();
  const merges = hasRole(me, 'desk') || hasRole(me, 'manager');
  const gone = pair.dogs.find((d) => d.id !== keep?.id);
  return (
    <Sheet title={pair.why === 'number' ? t('The same number') : t('The same name and birth')} className="tasks">
      <div className="cols two">
        {pair.dogs.map((d) => (
          <div key={d.id}>
            <h3>
              <Link to="/dogs/$dog" params={{ dog: d.id }}>
                {d.name}
              </Link>
            </h3>
            <p>
              {t('{breed}, {sex}, born {day},', { breed: d.breed, sex: t.known(d.sex), day: fullDay(d.born) })} {d.transponder ? <span className="num">{d.transponder}</span> : t('no number')}
            </p>
            <p className="small quiet">
              {t('Animal number {number}. {owner}. {orders, plural, one {# order} other {# orders}}.', { number: d.animalId, owner: d.owner, orders: d.orders })}
            </p>
            {merges && !keep && <Button onPress={() => setKeep(d)}>{t('Keep this entry')}</Button>}
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
    <EntryForm label={t('Merge {number} into {other}', { number: gone.animalId, other: keep.animalId })} tries={entry.tries} errors={entry.errors} failure={merge.error} busy={merge.isPending} onSubmit={submit} beside={<Button onPress={close}>{t('Leave it')}</Button>}>
      <Notice>{t('Two dogs in one record cannot be told apart again. Scan the dog first if you are not certain.')}</Notice>
      <TextField label={t('How you know that this is one dog')} {...entry.field('why')} autoFocus />
    </EntryForm>
  );
}
