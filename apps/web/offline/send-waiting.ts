import type { OrderScreen } from '#libs/contracts/screens/order';
import { orderKey } from '../api/board.js';
import { post } from '../api/client.js';
import { isFailure, isSilence, type ApiFailure } from '../api/failure.js';
import { queryClient } from '../api/query-client.js';
import { meKey, signedIn } from '../api/session.js';
import { markRefused, readWaiting, takeOff } from './outbox.js';
import type { Waiting } from './witnessed.js';

const PATIENCE_MS = 15_000;
const EVERY_MS = 5_000;

/** One tab sends, in the order in which it happened; an answer that was lost is asked for again under the same key, and stored once. */
export async function sendWaiting(): Promise<void> {
  await navigator.locks.request('cotyla-tablet', { ifAvailable: true }, async (lock) => {
    if (!lock) return;
    let goesOn = true;
    while (goesOn) {
      const mine = signedIn(queryClient)?.id;
      const next = (await readWaiting()).find((w) => !w.refused && w.by === mine);
      goesOn = next !== undefined && (await sendOne(next));
    }
  });
}

/** Whether the next one may be tried. */
async function sendOne(entry: Waiting): Promise<boolean> {
  const { key, on, at, input } = entry;
  try {
    const screen = await post<OrderScreen>(`/orders/${entry.order}/actions/${entry.action}`, { key, on, at, input }, AbortSignal.timeout(PATIENCE_MS));
    queryClient.setQueryData(orderKey(entry.order), screen);
    await takeOff(entry);
    return true;
  } catch (error) {
    if (!isFailure(error)) throw error;
    if (error.status === 401 || error.code === 'CSRF') void queryClient.invalidateQueries({ queryKey: meKey });
    if (mayYetBeTaken(error)) return false;
    // It stays and says why; what came after it has happened all the same.
    await markRefused(entry, error.message);
    return true;
  }
}

const mayYetBeTaken = (error: ApiFailure) => isSilence(error) || error.status >= 500 || error.code === 'CSRF' || [401, 408, 429].includes(error.status);

/** From the first page on, and whenever the network may be back. */
export function keepSending(): void {
  const send = () => void sendWaiting();
  window.addEventListener('online', send);
  document.addEventListener('visibilitychange', send);
  setInterval(send, EVERY_MS);
  send();
}
