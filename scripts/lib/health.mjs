import { setTimeout as pause } from 'node:timers/promises';

/** Waits until the api answers; gives up when `stop` is aborted. */
export async function waitForHealth(url, stop) {
  while (!stop.aborted) {
    try {
      const reply = await fetch(`${url}/api/health`, { signal: AbortSignal.timeout(2000) });
      if (reply.ok) return;
    } catch (error) {
      if (error.cause?.message === 'bad port') throw new Error(`Browsers refuse to open port ${new URL(url).port}, which is kept for another protocol. Choose another one, for example --port 4180.`, { cause: error });
      const notYet = error.name === 'TimeoutError' || error.cause?.code === 'ECONNREFUSED' || error.cause?.code === 'ECONNRESET';
      if (!notYet) throw error;
    }
    await pause(50);
  }
}
