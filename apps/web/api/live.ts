import { useQueryClient, type QueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';

/** Many facts come together, as when a tablet sends what it kept; the lists are asked for once. */
const GATHER_MS = 250;
const LISTS = ['board', 'orders', 'waiting-list', 'packages', 'owner', 'calendar', 'unmatched'];

/** Keeps what the page shows true while others work: the server says which order changed, and what shows it is asked for anew. */
export function useLive(signedIn: boolean) {
  const queries = useQueryClient();
  useEffect(() => (signedIn ? hear(gathered(queries)) : undefined), [queries, signedIn]);
}

type Heard = (order: string | 'missed') => void;

function gathered(queries: QueryClient): Heard {
  const orders = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const ask = () => {
    timer = undefined;
    if (orders.has('missed')) void queries.invalidateQueries();
    else for (const key of [...[...orders].map((id) => ['order', id]), ...LISTS.map((list) => [list])]) void queries.invalidateQueries({ queryKey: key });
    orders.clear();
  };
  return (order) => {
    orders.add(order);
    timer ??= setTimeout(ask, GATHER_MS);
  };
}

/** A browser opens few lines to one server: one window holds the line and tells the others. */
function hear(heard: Heard): () => void {
  const others = new BroadcastChannel('cotyla-live');
  others.onmessage = ({ data }: MessageEvent<string>) => heard(data);
  const over = new AbortController();
  const hold = () =>
    new Promise<void>((resolve) => {
      const line = new EventSource('/api/live');
      let opened = false;
      const tell = (order: string) => {
        heard(order);
        others.postMessage(order);
      };
      line.addEventListener('order', ({ data }: MessageEvent<string>) => tell((JSON.parse(data) as { order: string }).order));
      line.addEventListener('missed', () => tell('missed'));
      // What happened while the line was being opened again was told to nobody.
      line.onopen = () => {
        if (opened) tell('missed');
        opened = true;
      };
      over.signal.addEventListener('abort', () => {
        line.close();
        resolve();
      });
    });
  // Without a safe address there are no locks, and each window has a line of its own.
  if ('locks' in navigator) void navigator.locks.request('cotyla-live', { signal: over.signal }, hold).catch(() => undefined);
  else void hold();
  return () => {
    over.abort();
    others.close();
  };
}
