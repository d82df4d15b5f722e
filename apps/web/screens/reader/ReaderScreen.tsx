import { Navigate, useNavigate, useSearch } from '@tanstack/react-router';
import { Button } from '../../design/Button.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { useMe } from '../../shell/me.js';
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
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what="the packages" />;
  const [only] = data.rows;
  if (me.kind === 'readerLink' && only) return <Navigate to="/reader/$package" params={{ package: only.package }} replace />;
  const open = data.rows.filter(isOpen).length;
  return (
    <>
      <div className="head">
        <h1>Packages</h1>
        <p>
          {data.centre}. {open === 0 ? 'Nothing to read on this page.' : `${open} to read on this page.`}
        </p>
      </div>
      <section className="sheet" aria-labelledby="list">
        <h2 id="list" className="vh">
          List of packages
        </h2>
        {data.rows.length === 0 ? (
          <Empty title={page > 1 ? 'There are no more packages' : 'No package has been sent to you'}>{page > 1 ? 'Go back to the page before.' : 'When a practice sends films, a mail tells you and the package stands here.'}</Empty>
        ) : (
          <PackageLinks rows={data.rows} />
        )}
        {(page > 1 || data.more) && (
          <nav className="form-row pages" aria-label="Pages of the list">
            {page > 1 && <Button onPress={() => turn(page - 1)}>Earlier page</Button>}
            <span>Page {page}</span>
            {data.more && <Button onPress={() => turn(page + 1)}>Next page</Button>}
          </nav>
        )}
      </section>
    </>
  );
}
