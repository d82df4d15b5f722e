import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';
import { screenedWords, yearsOf, type Year } from './figures.js';
import { whole } from '../../design/format.js';

export function ScreenedNumbers({ years }: { years: Year[] }) {
  return (
    <Table
      caption={t('In this set, of those born, by birth year')}
      rows={years}
      rowKey={(year) => String(year.from)}
      columns={[
        { head: t('Born'), rowHead: true, cell: yearsOf },
        { head: t('Pups born'), right: true, cell: ({ screened }) => (screened.kind === 'notKnown' ? t('not known') : whole(screened.born)) },
        { head: t('In this set'), right: true, cell: (year) => year.n },
        { head: t('Of every 20 born'), cell: screenedWords },
      ]}
    />
  );
}
