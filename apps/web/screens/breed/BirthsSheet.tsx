import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { BirthsSaid, BreedPicture } from '#libs/contracts/screens/breeds';
import { post } from '../../api/client.js';
import { Notice } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { fullDay, whole } from '../../design/format.js';
import { t } from '../../words/t.js';
import { BirthsForm } from './BirthsForm.js';

type Births = BreedPicture['births'][number];

/** How many pups were born, as the lead wrote it down; without it nobody can say which share was screened. */
export function BirthsSheet({ breed }: { breed: BreedPicture }) {
  const cache = useQueryClient();
  const say = useMutation({ mutationFn: (body: BirthsSaid) => post<BreedPicture>(`/scheme/breeds/${breed.id}/births`, body), onSuccess: (picture) => cache.setQueryData(['scheme', 'breeds', breed.id], picture) });
  return (
    <Sheet title={t('How many were born')} beside={t('in the scheme’s country')}>
      {breed.births.length === 0 ? (
        <p>{t('Nobody has written down yet how many pups of this breed were born, so the share that was screened is not known.')}</p>
      ) : (
        <Table
          caption={t('Pups born by year')}
          rows={breed.births}
          rowKey={({ year }) => String(year)}
          columns={[
            { head: t('Born in'), rowHead: true, cell: ({ year }) => year },
            { head: t('Pups'), right: true, cell: pups },
            { head: t('Where the number comes from'), cell: (said) => <Source said={said} /> },
            { head: t('Written down'), cell: ({ day, byName }) => <>{fullDay(day)}<br /><span className="label">{byName}</span></> },
          ]}
        />
      )}
      {say.isSuccess && <Notice>{t('Written down for {year}, with your name and today’s date.', { year: say.variables.year })}</Notice>}
      <BirthsForm key={say.submittedAt && say.isSuccess ? say.submittedAt : 'open'} say={say} />
    </Sheet>
  );
}

const pups = ({ born }: Pick<Births, 'born'>) => (born === null ? t('taken back') : whole(born));

function Source({ said: { source, before } }: { said: Births }) {
  return (
    <>
      {source}
      {before.map((earlier, i) => (
        <span key={i} className="label"><br />{t('Before: {pups}, {source} ({day}, {name})', { pups: pups(earlier), source: earlier.source, day: fullDay(earlier.day), name: earlier.byName })}</span>
      ))}
    </>
  );
}
