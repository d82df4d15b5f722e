import { useQueryClient, type QueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';

/** Many facts come together, as when a tablet sends what it kept; the lists are asked for once. */
const GATHER_MS = 250;
/** What shows images without an order. */
const TRAY = ['board', 'unmatched'];
/** What shows orders beside their own page. */
const LISTS = [...TRAY, 'orders', 'waiting-list', 'packages', 'owner', 'calendar'];

/** Keeps what the page shows true while others work: the server says which order changed, and what shows it is asked for anew. */
export function useLive(signedIn: boolean) {
  const queries = useQueryClient();
  useEffect(() => (signedIn ? hear(gathered(queries)) : undefined), [queries, signedIn]);
}

/** An order’s number; or that the tray of images changed, or that anything may have. */
type Heard = (what: string | 'tray' | 'missed') => void;

function gathered(queries: QueryClient): Heard {
  const heard = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const ask = () => {
    timer = undefined;
    if (heard.has('missed')) void queries.invalidateQueries();
    else {
      const orders = [...heard].filter((what) => what !== 'tray');
      for (const key of [...orders.map((id) => ['order', id]), ...(orders.length > 0 ? LISTS : TRAY).map((list) => [list])]) void queries.invalidateQueries({ queryKey: key });
    }
    heard.clear();
  };
  return (what) => {
    heard.add(what);
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
      const tell = (what: string) => {
        heard(what);
        others.postMessage(what);
      };
      line.addEventListener('order', ({ data }: MessageEvent<string>) => tell((JSON.parse(data) as { order: string }).order));
      line.addEventListener('tray', () => tell('tray'));
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
