import { Link } from '@tanstack/react-router';
import type { Me } from '#libs/contracts/session';
import { hasRole, isStaff } from './me.js';

/** Pages that this person has. */
export function Tabs({ me }: { me: Me }) {
  return (
    <nav className="tabs" aria-label="Pages">
      {isStaff(me) && (
        <>
          <Link to="/" activeOptions={{ exact: true, includeSearch: false }}>
            Today
          </Link>
          <Link to="/orders" search={{}}>
            Orders
          </Link>
          <Link to="/dogs" search={{}}>
            Dogs
          </Link>
        </>
      )}
      {isStaff(me) && <Link to="/practice">Practice</Link>}
      {isStaff(me) && hasRole(me, 'manager') && <Link to="/requests">Data requests</Link>}
      {(me.kind === 'reader' || hasRole(me, 'reader')) && <Link to="/reader">Packages</Link>}
      {(me.kind === 'lead' || hasRole(me, 'lead')) && <Link to="/scheme">Scheme</Link>}
      {me.mailbox && <Link to="/mailbox">Mailbox</Link>}
    </nav>
  );
}
