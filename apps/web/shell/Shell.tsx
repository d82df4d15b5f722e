import { Navigate, Outlet, useLocation } from '@tanstack/react-router';
import { useEffect } from 'react';
import { useLive } from '../api/live.js';
import { useMeQuery } from '../api/session.js';
import { ErrorBar } from '../design/Notice.js';
import { readIn, t, useReading } from '../words/t.js';
import { Brand } from './Brand.js';
import { homeOf, MeProvider, isStaff } from './me.js';
import { Person } from './Person.js';
import { Search } from './Search.js';
import { Tabs } from './Tabs.js';
import { Tour } from './tour/Tour.js';

/** The strip at the top and the page below it, for anybody signed in. */
export function Shell() {
  const { data: me, error, isPending } = useMeQuery();
  const location = useLocation();
  useLive(me?.kind === 'staff' || me?.kind === 'reader');
  const reading = useReading();
  useEffect(() => {
    if (me) void readIn(me.language);
  }, [me]);
  if (isPending || (me && me.language !== reading)) return null;
  if (error && me === undefined) return <main className="bare"><ErrorBar error={error} /></main>;
  // On the way out the address is the next page's already: it must not be asked for once more.
  if (!me && location.pathname === '/sign-in') return null;
  if (!me) return <Navigate to="/sign-in" search={location.href === '/' ? {} : { then: location.href }} replace />;
  // A bookmark, or the icon on a tablet, opens the day board, which is not everybody's.
  if (location.pathname === '/' && homeOf(me) !== '/') return <Navigate to={homeOf(me)} replace />;
  return (
    <MeProvider value={me} key={reading}>
      <a className="skip" href="#main">
        {t('Go to the page')}
      </a>
      <header>
        <div className="strip">
          <Brand house={me.home ? houseOf(me.home) : null} />
          {isStaff(me) ? <Search /> : <span />}
          <Person me={me} />
        </div>
        <Tabs me={me} />
      </header>
      <main id="main">
        {location.pathname === homeOf(me) && <Tour />}
        <Outlet />
      </main>
    </MeProvider>
  );
}

/** A name that says its place already does not say it twice. */
const houseOf = ({ name, place }: { name: string; place: string }) => (place && !name.endsWith(place) ? `${name}, ${place}` : name);
