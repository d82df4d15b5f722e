import { Link } from '@tanstack/react-router';
import type { PackageRow } from '#libs/contracts/screens/reader';
import { t } from '../../words/t.js';
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
              {t('{study}, {films, plural, one {# picture} other {# pictures}}', { study: row.study, films: row.films })}
            </span>
            {!slim && (
              <>
                <span className="dog">
                  {row.breed}, {t.known(row.sex)}, {row.ageAtImaging}
                </span>
                {row.state === 'new' && <span className="state">{t('new')}</span>}
              </>
            )}
          </Link>
        </li>
      ))}
    </ul>
  );
}
