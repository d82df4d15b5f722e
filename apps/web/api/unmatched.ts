import { keepPreviousData, useMutation, useQuery, useQueryClient, type QueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { assignImage, setAsideImage, Unmatched } from '#libs/contracts/gateway';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { get, post, query } from './client.js';
import { keepFirstPage } from './paged.js';

const key = 'unmatched';

export const useUnmatched = (page: number) => useQuery({ queryKey: [key, page], queryFn: () => get<Unmatched>(`/unmatched${query({ page })}`), refetchInterval: 30_000, placeholderData: keepPreviousData });

/** Both answer with the tray as it is then. */
function useSettle<Body>(what: 'assign' | 'set-aside') {
  const queries = useQueryClient();
  return useMutation({ mutationFn: ({ image, body }: { image: string; body: Body }) => post<Unmatched>(`/unmatched/${image}/${what}`, body), onSuccess: (tray) => settled(queries, tray) });
}

function settled(queries: QueryClient, tray: Unmatched): void {
  keepFirstPage(queries, [key], tray);
  // The day board says how many wait.
  void queries.invalidateQueries({ queryKey: ['board'] });
}

export const useAssignImage = () => useSettle<z.input<typeof assignImage>>('assign');
export const useSetAside = () => useSettle<z.input<typeof setAsideImage>>('set-aside');

export function useSetAsidePerformed() {
  const queries = useQueryClient();
  return useMutation({ mutationFn: ({ step, body }: { step: string; body: z.input<typeof setAsideImage> }) => post<Unmatched>(`/unmatched/performed/${step}/set-aside`, body), onSuccess: (tray) => settled(queries, tray) });
}

export function useLeaveOut(order: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: ({ image, body }: { image: string; body: z.input<typeof setAsideImage> }) => post<OrderScreen>(`/orders/${order}/arrived/${image}/leave-out`, body),
    onSuccess: (screen) => queries.setQueryData(['order', order], screen),
  });
}
