import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { Channels, newChannel } from '#libs/contracts/dispatch';
import type { Machines, newMachine } from '#libs/contracts/gateway';
import type { PracticeScreen, newReader } from '#libs/contracts/register';
import type { Closing, Closures, ReachableDays, newClosure, reachableDays, startClosing } from '#libs/contracts/people';
import { get, post } from '../../api/client.js';

const key = ['practice'];

export const usePractice = () => useQuery({ queryKey: key, queryFn: () => get<PracticeScreen>('/practice') });

/** Whatever is added, the whole register comes back, with what is still missing. */
export function useAdd(path: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: unknown) => post<PracticeScreen>(`/practice${path}`, body),
    onSuccess: (screen) => {
      queries.setQueryData(key, screen);
      void queries.invalidateQueries({ queryKey: ['booking-options'] });
    },
  });
}

/** A reader belongs to the centre; this register only hears that it was done. */
export const useAddReader = (centre: string) => useMutation({ mutationFn: (body: z.output<typeof newReader>) => post<unknown>(`/practice/centres/${centre}/readers`, body) });

const SOON_MS = 1_000;

interface More<Page> {
  /** While something on the page does, it is asked for again. */
  goesOn?: (page: Page) => boolean;
  /** Without what is shown for once. */
  kept?: (page: Page) => Page;
}

/** A page of its own beside the register, which answers each change with itself. */
export function useOwnPage<Page, Body>(name: string, change: string, { goesOn = () => false, kept = (page) => page }: More<Page> = {}) {
  const queries = useQueryClient();
  const read = useQuery({ queryKey: [...key, name], queryFn: () => get<Page>(`/practice/${name}`), refetchInterval: ({ state }) => (state.data && goesOn(state.data) ? SOON_MS : false) });
  const add = useMutation({ mutationFn: (body: Body) => post<Page>(`/practice/${change}`, body), onSuccess: (page) => queries.setQueryData([...key, name], kept(page)) });
  return { ...read, add };
}

export const useReachableDays = () => useOwnPage<ReachableDays, z.input<typeof reachableDays>>('reachable', 'reachable');
export const useClosing = () => useOwnPage<Closing, z.input<typeof startClosing>>('closing', 'closing');
export const useClosures = (centre = '') => useOwnPage<Closures, z.input<typeof newClosure>>('closures', `centres/${centre}/closures`);
export const useChannels = (centre = '') => useOwnPage<Channels, z.input<typeof newChannel>>('channels', `centres/${centre}/channel`, { goesOn: ({ rows }) => rows.some(({ trial }) => trial?.answer === null) });
export function useTryChannel(centre: string) {
  const queries = useQueryClient();
  return useMutation({ mutationFn: () => post<Channels>(`/practice/centres/${centre}/channel/try`), onSuccess: (page) => queries.setQueryData([...key, 'channels'], page) });
}
export const useMachines = () => useOwnPage<Machines, z.input<typeof newMachine>>('machines', 'machines');
export function useEndMachine() {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (machine: string) => post<Machines>(`/practice/machines/${machine}/end`), onSuccess: (page) => queries.setQueryData([...key, 'machines'], page) });
}
