import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useState } from 'react';
import { useDogs } from '../../api/register.js';
import { Button, buttonClass } from '../../design/Button.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { fullDay } from '../../design/format.js';
import { NewDogForm } from '../../dog-entry/NewDogForm.js';

export function DogsScreen() {
  const search = useSearch({ from: '/inside/dogs' });
  const navigate = useNavigate({ from: '/dogs' });
  const [adding, setAdding] = useState(false);
  const q = useDeferredValue(search.q);
  const { data, error } = useDogs({ ...(q && { q }), ...(search.page && { page: search.page }) });
  return (
    <>
      <div className="head">
        <h1>Dogs</h1>
        <div className="acts">
          <Button kind="ink" onPress={() => setAdding(true)}>
            New dog
          </Button>
          <Link to="/dogs/twins" className={buttonClass()}>
            Entered twice?
          </Link>
        </div>
      </div>
      {adding && (
        <Sheet title="New dog" className="tasks">
          <NewDogForm onMade={(dog) => void navigate({ to: '/dogs/$dog', params: { dog: dog.id } })} onCancel={() => setAdding(false)} />
        </Sheet>
      )}
      <section className="sheet" aria-label="Dogs">
        <div className="list-head">
          <TextField label="Name, transponder, owner or phone" type="search" value={search.q} onChange={(text) => void navigate({ search: (old) => ({ ...old, q: text, page: undefined }), replace: true })} />
        </div>
        <ErrorBar error={error} />
        {!data ? (
          !error && <Loading what="the dogs" />
        ) : data.rows.length === 0 ? (
          <Empty title={search.q ? `Nothing found for “${search.q}”` : 'No dogs yet'}>Other practices’ dogs are never shown here. A new dog is entered once, with its owner.</Empty>
        ) : (
          <Table
            caption="Dogs"
            rows={data.rows}
            rowKey={(r) => r.id}
            columns={[
              { head: 'Dog', cell: (r) => <Link to="/dogs/$dog" params={{ dog: r.id }}>{r.callName || r.name}</Link>, rowHead: true },
              { head: 'Registered name', cell: (r) => r.name },
              { head: 'Breed', cell: (r) => r.breed },
              { head: 'Sex', cell: (r) => r.sex },
              { head: 'Born', cell: (r) => <span className="nowrap">{fullDay(r.born)}</span> },
              { head: 'Transponder', cell: (r) => <span className="num nowrap">{r.transponder || 'none'}</span> },
              { head: 'Owner', cell: (r) => `${r.owner}${r.phone && `, ${r.phone}`}` },
            ]}
          />
        )}
        <Pager page={search.page ?? 1} more={data?.more ?? false} onPage={(page) => void navigate({ search: (old) => ({ ...old, page: page > 1 ? page : undefined }) })} />
      </section>
    </>
  );
}
