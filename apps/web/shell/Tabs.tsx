import { Link } from '@tanstack/react-router';
import type { Me } from '#libs/contracts/session';
import { hasRole, isStaff } from './me.js';
import { t } from '../words/t.js';

/** Pages that this person has. */
export function Tabs({ me }: { me: Me }) {
  return (
    <nav className="tabs" aria-label={t('Pages')}>
      {isStaff(me) && (
        <>
          <Link to="/" activeOptions={{ exact: true, includeSearch: false }}>
            {t('Today')}
          </Link>
          <Link to="/calendar" search={{}}>
            {t('Calendar')}
          </Link>
          <Link to="/orders" search={{}}>
            {t('Orders')}
          </Link>
          <Link to="/dogs" search={{}}>
            {t('Dogs')}
          </Link>
        </>
      )}
      {isStaff(me) && (hasRole(me, 'desk') || hasRole(me, 'manager')) && (
        <Link to="/fees" search={{}}>
          {t('Fees')}
        </Link>
      )}
      {isStaff(me) && <Link to="/practice">{t('Practice')}</Link>}
      {isStaff(me) && hasRole(me, 'manager') && <Link to="/requests">{t('Data requests')}</Link>}
      {(me.kind === 'reader' || hasRole(me, 'reader')) && <Link to="/reader">{t('Packages')}</Link>}
      {(me.kind === 'lead' || hasRole(me, 'lead')) && <Link to="/scheme">{t('Scheme')}</Link>}
      {me.mailbox && <Link to="/mailbox">{t('Mailbox')}</Link>}
    </nav>
  );
}
