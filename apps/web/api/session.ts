import { useMutation, useQuery, useQueryClient, type QueryClient } from '@tanstack/react-query';
import type { ChooseLanguage, DemoSignIns, Me, SignIn } from '#libs/contracts/session';
import { keepInBrowser } from '../words/t.js';
import { get, post, rememberCsrf } from './client.js';
import { signedOut } from './failure.js';

export const meKey = ['me'];

async function whoAmI(): Promise<Me | null> {
  try {
    const me = await get<Me>('/me');
    rememberCsrf(me.csrf);
    return me;
  } catch (error) {
    if (signedOut(error)) return null;
    throw error;
  }
}

/** Who uses the page; null when nobody has signed in. */
export const useMeQuery = () => useQuery({ queryKey: meKey, queryFn: whoAmI, staleTime: 5 * 60_000 });

/** Who uses the page, outside of it. */
export const signedIn = (queries: QueryClient) => queries.getQueryData<Me | null>(meKey);

/** After signing in, opening a link or setting up: everything known before belongs to somebody else. */
export function useBecome() {
  const queries = useQueryClient();
  return (me: Me | null) => {
    rememberCsrf(me?.csrf ?? '');
    queries.clear();
    queries.setQueryData(meKey, me);
  };
}

export function useSignIn() {
  const become = useBecome();
  return useMutation({ mutationFn: (body: SignIn) => post<Me>('/sign-in', body), onSuccess: become });
}

/** Kept with the person; behind a link nobody has an account, so there the browser keeps it. */
export function useChooseLanguage({ kind }: Me) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: ChooseLanguage) => {
      if (kind !== 'readerLink') return post<Me>('/me/language', body);
      keepInBrowser(body.language);
      return get<Me>('/me');
    },
    onSuccess: (me) => {
      queries.setQueryData(meKey, me);
      // Everything that was fetched before is in the other language.
      void queries.resetQueries({ predicate: ({ queryKey }) => queryKey[0] !== meKey[0] });
    },
  });
}

export function useSignOut() {
  const become = useBecome();
  return useMutation({ mutationFn: () => post<unknown>('/sign-out'), onSuccess: () => become(null) });
}

export const useDemoSignIns = () =>
  useQuery({ queryKey: ['demo-sign-ins'], queryFn: () => get<DemoSignIns>('/demo-sign-ins'), retry: false, staleTime: Infinity });

export const useFirstRunNeeded = () =>
  useQuery({ queryKey: ['first-run'], queryFn: () => get<{ needed: boolean }>('/first-run'), retry: false });
