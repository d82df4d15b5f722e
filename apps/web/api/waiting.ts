import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { joinWaiting, WaitingList } from '#libs/contracts/waiting';
import { get, post, query } from './client.js';
import { keepFirstPage } from './paged.js';

const key = 'waiting-list';

export const useWaitingList = (page: number) => useQuery({ queryKey: [key, page], queryFn: () => get<WaitingList>(`/waiting-list${query({ page })}`), refetchInterval: 30_000, placeholderData: keepPreviousData });

/** Both answer with the list as it is then. */
function useChange<Body>(path: (body: Body) => string, sent: (body: Body) => object) {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (body: Body) => post<WaitingList>(path(body), sent(body)), onSuccess: (list) => keepFirstPage(queries, [key], list) });
}

export const useJoinWaiting = () => useChange<{ order: string; input: z.input<typeof joinWaiting> }>(({ order }) => `/orders/${order}/waiting`, ({ input }) => input);
export const useLeaveWaiting = () => useChange<{ entry: string }>(({ entry }) => `/waiting-list/${entry}/leave`, () => ({}));
