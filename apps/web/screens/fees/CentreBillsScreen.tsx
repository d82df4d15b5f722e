import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { buttonClass } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { t } from '../../words/t.js';
import { BillsList, LinesList, UnbilledList } from './BillLists.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

export type BillsShown = 'bills' | 'unmatched' | 'disputed' | 'unbilled';
const shows: { id: BillsShown; name: PageSentence }[] = [
  { id: 'bills', name: 'Bills' },
  { id: 'unmatched', name: 'Billed, not sent' },
  { id: 'unbilled', name: 'Read, not billed' },
  { id: 'disputed', name: 'Disputed' },
];
const files: Record<BillsShown, string> = { bills: 'export.csv', unmatched: 'lines.csv?show=unmatched', disputed: 'lines.csv?show=disputed', unbilled: 'unbilled.csv' };

/** What the centres bill, and both ways of what does not fit. */
export function CentreBillsScreen() {
  const search = useSearch({ from: '/inside/fees/centres' });
  const navigate = useNavigate({ from: '/fees/centres' });
  const show = search.show ?? 'bills';
  const page = search.page ?? 1;
  const turn = (next: number) => void navigate({ search: (old) => ({ ...old, page: next > 1 ? next : undefined }) });
  return (
    <>
      <div className="head">
        <h1>{t('Bills of the centres')}</h1>
        <div className="acts">
          <Link to="/fees/centres/new" className={buttonClass('ink')}>
            {t('Enter a bill')}
          </Link>
          <CsvLink path={`/centre-bills/${files[show]}`} />
          {show === 'bills' && <CsvLink path="/centre-bills/lines.csv?show=all">{t('All lines as a file')}</CsvLink>}
          <Link to="/fees" search={{}} className={buttonClass()}>
            {t('Fees of the orders')}
          </Link>
        </div>
      </div>
      <section className="sheet" aria-label={t('Bills of the centres')}>
        <div className="list-head">
          <RadioChoice label={t('Show')} options={named(shows)} value={show} onChange={(s) => void navigate({ search: s === 'bills' || !s ? {} : { show: s }, replace: true })} />
        </div>
        {show === 'bills' && <BillsList page={page} onPage={turn} />}
        {(show === 'unmatched' || show === 'disputed') && <LinesList show={show} page={page} onPage={turn} />}
        {show === 'unbilled' && <UnbilledList page={page} onPage={turn} />}
      </section>
    </>
  );
}
