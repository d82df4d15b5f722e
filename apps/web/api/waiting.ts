import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { joinWaiting, WaitingList } from '#libs/contracts/waiting';
import { get, post } from './client.js';

const key = ['waiting-list'];

export const useWaitingList = () => useQuery({ queryKey: key, queryFn: () => get<WaitingList>('/waiting-list'), refetchInterval: 30_000 });

/** Both answer with the list as it is then. */
function useChange<Body>(path: (body: Body) => string, sent: (body: Body) => object) {
  const queries = useQueryClient();
  return useMutation({ mutationFn: (body: Body) => post<WaitingList>(path(body), sent(body)), onSuccess: (list) => queries.setQueryData(key, list) });
}

export const useJoinWaiting = () => useChange<{ order: string; input: z.input<typeof joinWaiting> }>(({ order }) => `/orders/${order}/waiting`, ({ input }) => input);
export const useLeaveWaiting = () => useChange<{ entry: string }>(({ entry }) => `/waiting-list/${entry}/leave`, () => ({}));
