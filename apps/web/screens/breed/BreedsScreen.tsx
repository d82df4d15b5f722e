import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { BreedList } from '#libs/contracts/screens/breeds';
import { get, post } from '../../api/client.js';
import { Button } from '../../design/Button.js';
import { CsvButton } from '../../design/CsvButton.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import '../scheme/scheme.css';

const key = ['scheme', 'breeds'];

export function BreedsScreen() {
  const { data, error } = useQuery({ queryKey: key, queryFn: () => get<BreedList>('/scheme/breeds'), refetchInterval: 15_000 });
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what={t('the breeds')} />;
  return (
    <>
      <div className="head">
        <h1>{t('Breeds')}</h1>
        <p>{t('Each as it was counted on one day. No dog, no owner and no practice is in a set.')}</p>
      </div>
      <div className="scheme">
        <Sheet title={t('Sets in force')}>
          {data.sets.length === 0 ? (
            <Empty title={t('No set yet')}>{t('A breed is shown from five dogs on that were read and whose owners agreed. Sets are frozen at the turn of the year, or when you say so.')}</Empty>
          ) : (
            <Table
              caption={t('Sets in force')}
              rows={data.sets}
              rowKey={(set) => set.id}
              columns={[
                { head: t('Breed'), rowHead: true, cell: (set) => <Link to="/scheme/breeds/$set" params={{ set: set.id }}>{set.breed}</Link> },
                { head: t('Study'), cell: (set) => <>{set.study}<br /><span className="label">{set.age}</span></> },
                { head: t('Dogs'), right: true, cell: (set) => set.n },
                { head: t('Counted on'), cell: (set) => fullDay(set.frozenOn) },
              ]}
            />
          )}
          {data.sets.length > 0 && <p className="after"><CsvButton name="breeds.csv" of={t('Sets in force')} head={['Breed', 'Study', 'Age', 'Dogs', 'Counted on']} rows={data.sets.map((set) => [set.breed, set.study, set.age, set.n, set.frozenOn])} /></p>}
        </Sheet>
        <Freeze last={data.last} />
      </div>
    </>
  );
}

/** The rule is said beforehand, so that nobody wonders why a set did not change. */
function Freeze({ last }: { last: BreedList['last'] }) {
  const cache = useQueryClient();
  const freeze = useMutation({ mutationFn: () => post<BreedList>('/scheme/breeds/freeze', {}), onSuccess: (list) => cache.setQueryData(key, list) });
  return (
    <Sheet title={t('Freezing new sets')}>
      {last && <p className="said">{t('Last on {day}, by {person}: {frozen, plural, one {# new set} other {# new sets}}, {waiting} as they were.', { day: fullDay(last.day), person: last.byName, frozen: last.frozen, waiting: last.waiting })}</p>}
      <p>{t('A set stays as it is. Papers name its day, and a dog’s place on its paper never moves. A new one is made where five or more dogs have come or left, so that nobody can read one dog’s value from two sets. Where one to four have left, so many others sit out that five have.')}</p>
      {freeze.isSuccess && <Notice>{t('Asked for, with your name and today’s date. Everything is counted anew first; this page shows the new sets when they are there.')}</Notice>}
      <ErrorBar error={freeze.error} />
      <p className="after"><Button kind="ink" onPress={() => freeze.mutate()}>{t('Freeze what may be frozen now')}</Button></p>
    </Sheet>
  );
}
