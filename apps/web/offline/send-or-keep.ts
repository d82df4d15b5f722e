import type { OrderScreen } from '#libs/contracts/screens/order';
import type { Act } from '../api/act.js';
import { post } from '../api/client.js';
import { isSilence } from '../api/failure.js';
import { queryClient } from '../api/query-client.js';
import { signedIn } from '../api/session.js';
import { sendWaiting } from './send-waiting.js';
import { keepForLater, readWaiting } from './outbox.js';
import { serverTime } from './server-time.js';
import type { Witnessed } from './witnessed.js';

/** A hand that waits for an answer longer than this goes on without it. */
const PATIENCE_MS = 8_000;

/** What was witnessed is sent now; where nobody answers it is kept with the time at which it happened, and sent later. Then there is no new page. */
export async function sendOrKeep(order: string, { action, ...act }: Act & { action: Witnessed }): Promise<OrderScreen | null> {
  const at = serverTime(order, Date.now());
  const me = signedIn(queryClient);
  const first = (await readWaiting()).every((w) => w.order !== order || w.refused);
  if (first || !me?.id) {
    try {
      return await post<OrderScreen>(`/orders/${order}/actions/${action}`, act, AbortSignal.timeout(PATIENCE_MS));
    } catch (error) {
      if (!me?.id || !isSilence(error)) throw error;
    }
  }
  await keepForLater({ key: act.key, order, action, on: act.on, at, input: act.input as Record<string, unknown>, by: me.id, byName: me.name });
  void sendWaiting();
  return null;
}
