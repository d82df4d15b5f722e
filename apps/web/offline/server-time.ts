import type { OrderScreen } from '#libs/contracts/screens/order';
import { orderKey } from '../api/board.js';
import { queryClient } from '../api/query-client.js';

/** A moment of this device as the server would have written it: tablets' clocks are wrong, the order's page came with the right time. */
export function serverTime(order: string, moment: number): string {
  const state = queryClient.getQueryState<OrderScreen>(orderKey(order));
  const ahead = state?.data ? Date.parse(state.data.now) - state.dataUpdatedAt : 0;
  return new Date(moment + ahead).toISOString();
}
