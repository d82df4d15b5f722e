import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import type { SchemeStudies } from '#libs/contracts/scheme-studies';
import { get, query } from '../../api/client.js';
import { buttonClass } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';

/** The list behind a number of the scheme's page. */
export function StudiesScreen() {
  const search = useSearch({ from: '/inside/scheme/studies' });
  const navigate = useNavigate({ from: '/scheme/studies' });
  const { data: list, error } = useQuery({ queryKey: ['scheme', 'studies', search], queryFn: () => get<SchemeStudies>(`/scheme/studies${query(search)}`), placeholderData: keepPreviousData });
  if (!list) return error ? <ErrorBar error={error} /> : <Loading what={t('the studies')} />;
  return (
    <>
      <div className="head">
        <h1>{list.title}</h1>
        <p>{t('Those that have stood there longest come first. Whose dog it is, the practice knows by the order’s number.')}</p>
        <div className="acts">
          <CsvLink path={`/scheme/studies.csv${query({ ...search, page: undefined })}`} />
          <Link to="/scheme" className={buttonClass()}>
            {t('The whole scheme')}
          </Link>
        </div>
      </div>
      <Sheet title={t('Studies')}>
        {list.rows.length === 0 ? (
          <Empty title={t('No study stands here now')}>{t('It has moved on since it was counted. The scheme’s page counts anew every minute.')}</Empty>
        ) : (
          <Table
            caption={list.title}
            rows={list.rows}
            rowKey={(r) => `${r.accession}-${r.study}`}
            columns={[
              { head: t('Order'), rowHead: true, cell: (r) => <span className="val">{r.accession}</span> },
              { head: t('Study'), cell: (r) => r.study },
              { head: t('Where it stands'), cell: (r) => <>{r.step}{r.since && <><br /><span className="label">{t('since {day}', { day: fullDay(r.since) })}</span></>}</> },
              { head: t('Due'), cell: (r) => (r.dueDay ? fullDay(r.dueDay) : <span className="quiet">{t('no day agreed')}</span>) },
              { head: t('From, and with'), cell: (r) => <>{r.practice}<br /><span className="label">{r.centre}</span></> },
            ]}
          />
        )}
        <Pager page={search.page ?? 1} more={list.more} onPage={(page) => void navigate({ search: (old) => ({ ...old, page: page > 1 ? page : undefined }) })} />
      </Sheet>
    </>
  );
}
