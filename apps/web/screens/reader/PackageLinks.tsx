import { Link } from '@tanstack/react-router';
import type { PackageRow } from '#libs/contracts/screens/reader';
import { plural } from '../../design/format.js';
import { dueWords, isOpen } from './due.js';

/** One row a package. The row says all there is: a reader's list knows no names. */
export function PackageLinks({ rows, slim }: { rows: PackageRow[]; slim?: boolean }) {
  return (
    <ul className={slim ? 'packages slim' : 'packages'}>
      {rows.map((row) => (
        <li key={row.package} className={row.overdue && isOpen(row) ? 'late' : undefined}>
          <Link to="/reader/$package" params={{ package: row.package }}>
            <b className="num">{row.number}</b>
            <span className="due">{dueWords(row)}</span>
            <span className="what">
              {row.study}, {plural(row.films, 'picture', 'pictures')}
            </span>
            {!slim && (
              <>
                <span className="dog">
                  {row.breed}, {row.sex}, {row.ageAtImaging}
                </span>
                {row.state === 'new' && <span className="state">new</span>}
              </>
            )}
          </Link>
        </li>
      ))}
    </ul>
  );
}
