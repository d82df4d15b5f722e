import { createRootRoute, createRoute, createRouter, lazyRouteComponent, Outlet } from '@tanstack/react-router';
import type { OrdersShown } from './api/board.js';
import { NoSuchPage, Trouble } from './shell/Trouble.js';
import { Shell } from './shell/Shell.js';

const text = (value: unknown) => (typeof value === 'string' && value !== '' ? value : typeof value === 'number' ? String(value) : undefined);
const page = (value: unknown) => (typeof value === 'number' && value > 1 ? Math.floor(value) : undefined);
const feesShown = (value: unknown): 'uncharged' | 'all' | undefined => (value === 'uncharged' || value === 'all' ? value : undefined);
const billsShown = (value: unknown): 'unmatched' | 'disputed' | 'unbilled' | undefined => (value === 'unmatched' || value === 'disputed' || value === 'unbilled' ? value : undefined);
const shown = (value: unknown): OrdersShown | undefined => (value === 'waiting' || value === 'all' ? value : undefined);

const root = createRootRoute({ component: Outlet, notFoundComponent: NoSuchPage, errorComponent: Trouble });

// Pages that need nobody signed in, or bring their own link.
const signIn = createRoute({ getParentRoute: () => root, path: '/sign-in', validateSearch: (s): { then?: string } => ({ then: text(s.then) }), component: lazyRouteComponent(() => import('./screens/sign-in/SignInScreen.js'), 'SignInScreen') });
const firstRun = createRoute({ getParentRoute: () => root, path: '/first-run', component: lazyRouteComponent(() => import('./screens/first-run/FirstRunScreen.js'), 'FirstRunScreen') });
const ownerLink = createRoute({ getParentRoute: () => root, path: '/o/$token', component: lazyRouteComponent(() => import('./screens/owner/OwnerLinkScreen.js'), 'OwnerLinkScreen') });
const owner = createRoute({ getParentRoute: () => root, path: '/owner', component: lazyRouteComponent(() => import('./screens/owner/OwnerScreen.js'), 'OwnerScreen') });
const readerLink = createRoute({ getParentRoute: () => root, path: '/r/$token', component: lazyRouteComponent(() => import('./screens/reader/ReaderLinkScreen.js'), 'ReaderLinkScreen') });
const join = createRoute({ getParentRoute: () => root, path: '/join/$token', component: lazyRouteComponent(() => import('./screens/reader/JoinScreen.js'), 'JoinScreen') });
const certificate = createRoute({ getParentRoute: () => root, path: '/c/$serial', component: lazyRouteComponent(() => import('./screens/certificate/CertificateScreen.js'), 'CertificateScreen') });

// Pages under the strip.
const inside = createRoute({ getParentRoute: () => root, id: 'inside', component: Shell, errorComponent: Trouble });
const board = createRoute({ getParentRoute: () => inside, path: '/', validateSearch: (s): { day?: string } => ({ day: text(s.day) }), component: lazyRouteComponent(() => import('./screens/day-board/DayBoardScreen.js'), 'DayBoardScreen') });
const calendar = createRoute({ getParentRoute: () => inside, path: '/calendar', validateSearch: (s): { day?: string; by?: 'operators' | 'week' } => ({ day: text(s.day), by: s.by === 'operators' || s.by === 'week' ? s.by : undefined }), component: lazyRouteComponent(() => import('./screens/calendar/CalendarScreen.js'), 'CalendarScreen') });
const book = createRoute({ getParentRoute: () => inside, path: '/book', validateSearch: (s): { dog?: string } => ({ dog: text(s.dog) }), component: lazyRouteComponent(() => import('./screens/booking/BookingScreen.js'), 'BookingScreen') });
const bookSeveral = createRoute({ getParentRoute: () => inside, path: '/book/litter', component: lazyRouteComponent(() => import('./screens/litter/LitterScreen.js'), 'LitterScreen') });
const together = createRoute({ getParentRoute: () => inside, path: '/litters/$group', component: lazyRouteComponent(() => import('./screens/litter/GroupScreen.js'), 'GroupScreen') });
const waiting = createRoute({ getParentRoute: () => inside, path: '/waiting', validateSearch: (s): { order?: string; visit?: string; dog?: string; page?: number } => ({ order: text(s.order), visit: text(s.visit), dog: text(s.dog), page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/waiting/WaitingScreen.js'), 'WaitingScreen') });
const unmatched = createRoute({ getParentRoute: () => inside, path: '/unmatched', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/unmatched/UnmatchedScreen.js'), 'UnmatchedScreen') });
const orders = createRoute({ getParentRoute: () => inside, path: '/orders', validateSearch: (s): { show?: OrdersShown; q?: string; page?: number } => ({ show: shown(s.show), q: text(s.q), page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/orders/OrdersScreen.js'), 'OrdersScreen') });
const order = createRoute({ getParentRoute: () => inside, path: '/orders/$order', component: lazyRouteComponent(() => import('./screens/order/OrderScreen.js'), 'OrderScreen') });
const watch = createRoute({ getParentRoute: () => inside, path: '/orders/$order/watch', component: lazyRouteComponent(() => import('./screens/watch/WatchScreen.js'), 'WatchScreen') });
const imaging = createRoute({ getParentRoute: () => inside, path: '/orders/$order/imaging', component: lazyRouteComponent(() => import('./screens/imaging/ImagingScreen.js'), 'ImagingScreen') });
const conflict = createRoute({ getParentRoute: () => inside, path: '/orders/$order/readings/$study', component: lazyRouteComponent(() => import('./screens/conflict/ConflictScreen.js'), 'ConflictScreen') });
const dogs = createRoute({ getParentRoute: () => inside, path: '/dogs', validateSearch: (s): { q?: string; page?: number } => ({ q: text(s.q), page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/dogs/DogsScreen.js'), 'DogsScreen') });
const dog = createRoute({ getParentRoute: () => inside, path: '/dogs/$dog', component: lazyRouteComponent(() => import('./screens/dogs/DogScreen.js'), 'DogScreen') });
const twins = createRoute({ getParentRoute: () => inside, path: '/dogs/twins', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/dogs/TwinsScreen.js'), 'TwinsScreen') });
const people = createRoute({ getParentRoute: () => inside, path: '/people', validateSearch: (s): { q?: string; page?: number } => ({ q: text(s.q), page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/people/PeopleScreen.js'), 'PeopleScreen') });
const closing = createRoute({ getParentRoute: () => inside, path: '/practice/closing', component: lazyRouteComponent(() => import('./screens/practice/ClosingScreen.js'), 'ClosingScreen') });
const practice = createRoute({ getParentRoute: () => inside, path: '/practice', component: lazyRouteComponent(() => import('./screens/practice/PracticeScreen.js'), 'PracticeScreen') });
const fees = createRoute({ getParentRoute: () => inside, path: '/fees', validateSearch: (s): { show?: 'open' | 'uncharged' | 'all'; q?: string; page?: number } => ({ show: feesShown(s.show), q: text(s.q), page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/fees/FeesScreen.js'), 'FeesScreen') });
const orderFees = createRoute({ getParentRoute: () => inside, path: '/orders/$order/fees', component: lazyRouteComponent(() => import('./screens/fees/OrderFeesScreen.js'), 'OrderFeesScreen') });
const bills = createRoute({ getParentRoute: () => inside, path: '/fees/centres', validateSearch: (s): { show?: 'bills' | 'unmatched' | 'disputed' | 'unbilled'; page?: number } => ({ show: billsShown(s.show), page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/fees/CentreBillsScreen.js'), 'CentreBillsScreen') });
const newBill = createRoute({ getParentRoute: () => inside, path: '/fees/centres/new', component: lazyRouteComponent(() => import('./screens/fees/NewBillScreen.js'), 'NewBillScreen') });
const bill = createRoute({ getParentRoute: () => inside, path: '/fees/centres/$bill', component: lazyRouteComponent(() => import('./screens/fees/BillScreen.js'), 'BillScreen') });
const resultsIn = createRoute({ getParentRoute: () => inside, path: '/results-in', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/results-in/ResultsInScreen.js'), 'ResultsInScreen') });
const schemeResultsIn = createRoute({ getParentRoute: () => inside, path: '/scheme/results-in', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/results-in/ResultsInScreen.js'), 'SchemeResultsInScreen') });
const requests = createRoute({ getParentRoute: () => inside, path: '/requests', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/requests/RequestsScreen.js'), 'RequestsScreen') });
const packages = createRoute({ getParentRoute: () => inside, path: '/reader', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/reader/ReaderScreen.js'), 'ReaderScreen') });
const onePackage = createRoute({ getParentRoute: () => inside, path: '/reader/$package', component: lazyRouteComponent(() => import('./screens/reader/PackageScreen.js'), 'PackageScreen') });
const scheme = createRoute({ getParentRoute: () => inside, path: '/scheme', component: lazyRouteComponent(() => import('./screens/scheme/SchemeScreen.js'), 'SchemeScreen') });
const schemeStudies = createRoute({ getParentRoute: () => inside, path: '/scheme/studies', validateSearch: (s): { protocol?: string; step?: string; show?: 'unsent'; page?: number } => ({ protocol: text(s.protocol), step: text(s.step), show: s.show === 'unsent' ? 'unsent' : undefined, page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/scheme/StudiesScreen.js'), 'StudiesScreen') });
const choosing = createRoute({ getParentRoute: () => inside, path: '/scheme/choosing', component: lazyRouteComponent(() => import('./screens/choosing/ChoosingScreen.js'), 'ChoosingScreen') });
const readersPage = createRoute({ getParentRoute: () => inside, path: '/scheme/readers', component: lazyRouteComponent(() => import('./screens/readers/ReadersScreen.js'), 'ReadersScreen') });
const breeds = createRoute({ getParentRoute: () => inside, path: '/scheme/breeds', component: lazyRouteComponent(() => import('./screens/breed/BreedsScreen.js'), 'BreedsScreen') });
const breed = createRoute({ getParentRoute: () => inside, path: '/scheme/breeds/$set', component: lazyRouteComponent(() => import('./screens/breed/BreedScreen.js'), 'BreedScreen') });
const help = createRoute({ getParentRoute: () => inside, path: '/help', component: lazyRouteComponent(() => import('./screens/help/HelpScreen.js'), 'HelpScreen') });
const mailbox = createRoute({ getParentRoute: () => inside, path: '/mailbox', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/mailbox/MailboxScreen.js'), 'MailboxScreen') });
const mail = createRoute({ getParentRoute: () => inside, path: '/mailbox/$mail', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/mailbox/MailScreen.js'), 'MailScreen') });

const tree = root.addChildren([signIn, firstRun, ownerLink, owner, readerLink, join, certificate, inside.addChildren([board, calendar, book, bookSeveral, together, waiting, unmatched, orders, order, watch, imaging, conflict, dogs, twins, dog, people, practice, requests, closing, fees, orderFees, bills, newBill, bill, resultsIn, schemeResultsIn, packages, onePackage, scheme, schemeStudies, breeds, breed, choosing, readersPage, help, mailbox, mail])]);

export const router = createRouter({ routeTree: tree, defaultPreload: 'intent', scrollRestoration: true });

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
