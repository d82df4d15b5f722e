import { Link, Navigate, useNavigate, useSearch } from '@tanstack/react-router';
import { buttonClass } from '../../design/Button.js';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { PackageLinks } from './PackageLinks.js';
import { isOpen } from './due.js';
import { usePackages } from './queries.js';
import './reader.css';

export function ReaderScreen() {
  const { page = 1 } = useSearch({ from: '/inside/reader' });
  const navigate = useNavigate();
  const me = useMe();
  const { data, error } = usePackages(page);
  const turn = (to: number) => void navigate({ to: '/reader', search: to > 1 ? { page: to } : {} });
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what={t('the packages')} />;
  const [only] = data.rows;
  if (me.kind === 'readerLink' && only) return <Navigate to="/reader/$package" params={{ package: only.package }} replace />;
  const open = data.rows.filter(isOpen).length;
  return (
    <>
      <div className="head">
        <h1>{t('Packages')}</h1>
        <p>
          {data.centre}. {open === 0 ? t('Nothing to read on this page.') : t('{open} to read on this page.', { open })}
        </p>
        <div className="acts">
          <CsvLink path="/reader/packages/export.csv" />
          {me.kind === 'reader' && <Link to="/results-in" className={buttonClass()}>{t('Readings from a file')}</Link>}
        </div>
      </div>
      <section className="sheet" aria-labelledby="list">
        <h2 id="list" className="vh">
          {t('List of packages')}
        </h2>
        {data.rows.length === 0 ? (
          <Empty title={page > 1 ? t('There are no more packages') : t('No package has been sent to you')}>{page > 1 ? t('Go back to the page before.') : t('When a practice sends films, a mail tells you and the package stands here.')}</Empty>
        ) : (
          <PackageLinks rows={data.rows} />
        )}
        <Pager page={page} more={data.more} onPage={turn} />
      </section>
    </>
  );
}
