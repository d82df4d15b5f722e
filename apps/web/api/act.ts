import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ActionName } from '#libs/contracts/actions/all';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { orderKey } from './board.js';
import { post } from './client.js';
import { isFailure } from './failure.js';

export type Act = {
  action: ActionName;
  /** The order, visit or study it is done to. */
  on: string;
  /** The order as the person saw it; a decision on an older one is answered with what changed. */
  version: number;
  /** One a form, so that pressing twice or sending again is one act. */
  key: string;
  /** When it was, for what is written down later. */
  at?: string;
  input: unknown;
};

export function useAct(order: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: ({ action, ...rest }: Act) => post<OrderScreen>(`/orders/${order}/actions/${action}`, rest),
    onSuccess: (screen) => {
      queries.setQueryData(orderKey(order), screen);
      void queries.invalidateQueries({ queryKey: ['board'] });
      void queries.invalidateQueries({ queryKey: ['orders'] });
      // What the act set going, a mail for one, has mostly happened by then.
      setTimeout(() => void queries.invalidateQueries({ queryKey: orderKey(order) }), 2_500);
    },
    onError: (error) => {
      if (isFailure(error) && error.code === 'CHANGED_MEANWHILE') void queries.invalidateQueries({ queryKey: orderKey(order) });
    },
  });
}

/** Things about an order that are not steps of it: links, problems, mails of unknown outcome. */
export function useOrderErrand(order: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: ({ path, body }: { path: string; body?: unknown }) => post<unknown>(`/orders/${order}${path}`, body),
    onSettled: () => queries.invalidateQueries({ queryKey: orderKey(order) }),
  });
}
