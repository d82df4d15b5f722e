import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useState } from 'react';
import { query } from '../../api/client.js';
import { useDogs } from '../../api/register.js';
import { Button, buttonClass } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { fullDay } from '../../design/format.js';
import { NewDogForm } from '../../dog-entry/NewDogForm.js';
import { t } from '../../words/t.js';

export function DogsScreen() {
  const search = useSearch({ from: '/inside/dogs' });
  const navigate = useNavigate({ from: '/dogs' });
  const [adding, setAdding] = useState(false);
  const q = useDeferredValue(search.q);
  const { data, error } = useDogs({ ...(q && { q }), ...(search.page && { page: search.page }) });
  return (
    <>
      <div className="head">
        <h1>{t('Dogs')}</h1>
        <div className="acts">
          <Button kind="ink" onPress={() => setAdding(true)}>
            {t('New dog')}
          </Button>
          <Link to="/dogs/twins" className={buttonClass()}>
            {t('Entered twice?')}
          </Link>
          <Link to="/people" search={{}} className={buttonClass()}>
            {t('People')}
          </Link>
          <CsvLink path={`/dogs.csv${query({ q })}`} />
        </div>
      </div>
      {adding && (
        <Sheet title={t('New dog')} className="tasks">
          <NewDogForm onMade={(dog) => void navigate({ to: '/dogs/$dog', params: { dog: dog.id } })} onCancel={() => setAdding(false)} />
        </Sheet>
      )}
      <section className="sheet" aria-label={t('Dogs')}>
        <div className="list-head">
          <TextField label={t('Name, transponder, owner or phone')} type="search" value={search.q} onChange={(text) => void navigate({ search: (old) => ({ ...old, q: text, page: undefined }), replace: true })} />
        </div>
        <ErrorBar error={error} />
        {!data ? (
          !error && <Loading what={t('the dogs')} />
        ) : data.rows.length === 0 ? (
          <Empty title={search.q ? t('Nothing found for “{q}”', { q: search.q }) : t('No dogs yet')}>{t('Other practices’ dogs are never shown here. A new dog is entered once, with its owner.')}</Empty>
        ) : (
          <Table
            caption={t('Dogs')}
            rows={data.rows}
            rowKey={(r) => r.id}
            columns={[
              { head: t('Dog'), cell: (r) => <Link to="/dogs/$dog" params={{ dog: r.id }}>{r.callName || r.name}</Link>, rowHead: true },
              { head: t('Registered name'), cell: (r) => r.name },
              { head: t('Breed'), cell: (r) => r.breed },
              { head: t('Sex'), cell: (r) => t.known(r.sex) },
              { head: t('Born'), cell: (r) => <span className="nowrap">{fullDay(r.born)}</span> },
              { head: t('Transponder'), cell: (r) => <span className="num nowrap">{r.transponder || t('none')}</span> },
              { head: t('Owner'), cell: (r) => `${r.owner}${r.phone && `, ${r.phone}`}` },
            ]}
          />
        )}
        <Pager page={search.page ?? 1} more={data?.more ?? false} onPage={(page) => void navigate({ search: (old) => ({ ...old, page: page > 1 ? page : undefined }) })} />
      </section>
    </>
  );
}
