import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ActionName } from '#libs/contracts/actions/all';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { orderKey } from './board.js';
import { sendOrKeep } from '../offline/send-or-keep.js';
import { isWitnessed } from '../offline/witnessed.js';
import { post } from './client.js';
import { isFailure, isSilence, needsNetwork } from './failure.js';

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
    // Also without a network: then what was witnessed is kept, and what is decided is told that it needs one.
    networkMode: 'always',
    mutationFn: ({ action, ...act }: Act) => (isWitnessed(action) && !act.at ? sendOrKeep(order, { action, ...act }) : decide(order, action, act)),
    onSuccess: (screen) => {
      if (!screen) return;
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

async function decide(order: string, action: ActionName, act: Omit<Act, 'action'>): Promise<OrderScreen> {
  try {
    return await post<OrderScreen>(`/orders/${order}/actions/${action}`, act);
  } catch (error) {
    throw isSilence(error) ? needsNetwork() : error;
  }
}

/** Things about an order that are not steps of it: links, problems, mails of unknown outcome. */
export function useOrderErrand(order: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: ({ path, body }: { path: string; body?: unknown }) => post<unknown>(`/orders/${order}${path}`, body),
    onSettled: () => queries.invalidateQueries({ queryKey: orderKey(order) }),
  });
}
