import type { BreedPicture } from '#libs/contracts/screens/breeds';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';
import { of20 } from './figures.js';

/** Grades are steps and no measures: counted, never averaged. */
export function Grades({ grades, n }: { grades: NonNullable<BreedPicture['grades']>; n: number }) {
  return (
    <Sheet title={t('How the breed lies')}>
      <Table
        caption={t('Dogs by grade')}
        rows={grades}
        rowKey={(row) => row.grade}
        columns={[
          { head: t('Grade of the dog'), rowHead: true, cell: (row) => row.grade },
          { head: t('Dogs'), right: true, cell: (row) => row.n },
          { head: t('Of every 20'), right: true, cell: (row) => of20(row.n / n) },
          { head: t('May be'), cell: (row) => t('{lower} to {upper}', { lower: of20(row.interval.lower), upper: of20(row.interval.upper) }) },
        ]}
      />
    </Sheet>
  );
}
