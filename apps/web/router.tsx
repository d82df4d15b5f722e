import { createRootRoute, createRoute, createRouter, lazyRouteComponent, Outlet } from '@tanstack/react-router';
import type { OrdersShown } from './api/board.js';
import { NoSuchPage, Trouble } from './shell/Trouble.js';
import { Shell } from './shell/Shell.js';

const text = (value: unknown) => (typeof value === 'string' && value !== '' ? value : typeof value === 'number' ? String(value) : undefined);
const page = (value: unknown) => (typeof value === 'number' && value > 1 ? Math.floor(value) : undefined);
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
const book = createRoute({ getParentRoute: () => inside, path: '/book', validateSearch: (s): { dog?: string } => ({ dog: text(s.dog) }), component: lazyRouteComponent(() => import('./screens/booking/BookingScreen.js'), 'BookingScreen') });
const bookSeveral = createRoute({ getParentRoute: () => inside, path: '/book/litter', component: lazyRouteComponent(() => import('./screens/litter/LitterScreen.js'), 'LitterScreen') });
const together = createRoute({ getParentRoute: () => inside, path: '/litters/$group', component: lazyRouteComponent(() => import('./screens/litter/GroupScreen.js'), 'GroupScreen') });
const waiting = createRoute({ getParentRoute: () => inside, path: '/waiting', validateSearch: (s): { order?: string; visit?: string; dog?: string } => ({ order: text(s.order), visit: text(s.visit), dog: text(s.dog) }), component: lazyRouteComponent(() => import('./screens/waiting/WaitingScreen.js'), 'WaitingScreen') });
const orders = createRoute({ getParentRoute: () => inside, path: '/orders', validateSearch: (s): { show?: OrdersShown; q?: string; page?: number } => ({ show: shown(s.show), q: text(s.q), page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/orders/OrdersScreen.js'), 'OrdersScreen') });
const order = createRoute({ getParentRoute: () => inside, path: '/orders/$order', component: lazyRouteComponent(() => import('./screens/order/OrderScreen.js'), 'OrderScreen') });
const conflict = createRoute({ getParentRoute: () => inside, path: '/orders/$order/readings/$study', component: lazyRouteComponent(() => import('./screens/conflict/ConflictScreen.js'), 'ConflictScreen') });
const dogs = createRoute({ getParentRoute: () => inside, path: '/dogs', validateSearch: (s): { q?: string; page?: number } => ({ q: text(s.q), page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/dogs/DogsScreen.js'), 'DogsScreen') });
const dog = createRoute({ getParentRoute: () => inside, path: '/dogs/$dog', component: lazyRouteComponent(() => import('./screens/dogs/DogScreen.js'), 'DogScreen') });
const twins = createRoute({ getParentRoute: () => inside, path: '/dogs/twins', component: lazyRouteComponent(() => import('./screens/dogs/TwinsScreen.js'), 'TwinsScreen') });
const closing = createRoute({ getParentRoute: () => inside, path: '/practice/closing', component: lazyRouteComponent(() => import('./screens/practice/ClosingScreen.js'), 'ClosingScreen') });
const practice = createRoute({ getParentRoute: () => inside, path: '/practice', component: lazyRouteComponent(() => import('./screens/practice/PracticeScreen.js'), 'PracticeScreen') });
const requests = createRoute({ getParentRoute: () => inside, path: '/requests', component: lazyRouteComponent(() => import('./screens/requests/RequestsScreen.js'), 'RequestsScreen') });
const packages = createRoute({ getParentRoute: () => inside, path: '/reader', validateSearch: (s): { page?: number } => ({ page: page(s.page) }), component: lazyRouteComponent(() => import('./screens/reader/ReaderScreen.js'), 'ReaderScreen') });
const onePackage = createRoute({ getParentRoute: () => inside, path: '/reader/$package', component: lazyRouteComponent(() => import('./screens/reader/PackageScreen.js'), 'PackageScreen') });
const scheme = createRoute({ getParentRoute: () => inside, path: '/scheme', component: lazyRouteComponent(() => import('./screens/scheme/SchemeScreen.js'), 'SchemeScreen') });
const mailbox = createRoute({ getParentRoute: () => inside, path: '/mailbox', component: lazyRouteComponent(() => import('./screens/mailbox/MailboxScreen.js'), 'MailboxScreen') });
const mail = createRoute({ getParentRoute: () => inside, path: '/mailbox/$mail', component: lazyRouteComponent(() => import('./screens/mailbox/MailScreen.js'), 'MailScreen') });

const tree = root.addChildren([signIn, firstRun, ownerLink, owner, readerLink, join, certificate, inside.addChildren([board, book, bookSeveral, together, waiting, orders, order, conflict, dogs, twins, dog, practice, requests, closing, packages, onePackage, scheme, mailbox, mail])]);

export const router = createRouter({ routeTree: tree, defaultPreload: 'intent', scrollRestoration: true });

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
