import { dehydrate, hydrate, type DehydratedState, type QueryClient } from '@tanstack/react-query';
import { openDB, type DBSchema } from 'idb';
import type { Me } from '#libs/contracts/session';
import { rememberCsrf } from '../api/client.js';
import { meKey } from '../api/session.js';

interface LastSeen extends DBSchema {
  seen: { key: 'now'; value: { at: number; state: DehydratedState } };
}

/** A working day; then a tablet that lies about shows nothing any more. Our own choice. */
const KEPT_MS = 12 * 3_600_000;
const WRITE_MS = 1_000;
/** Who is signed in, today's board and the orders looked at: what is needed beside a sleeping dog. */
const KEYS: ReadonlySet<unknown> = new Set(['me', 'board', 'order']);

const store = () => openDB<LastSeen>('cotyla-last-seen', 1, { upgrade: (db) => void db.createObjectStore('seen') });

/** What was on the screen is there again after a reload, also without network; signing out takes it away. */
export async function keepLastSeen(queries: QueryClient): Promise<void> {
  const db = await store();
  const kept = await db.get('seen', 'now');
  if (kept && Date.now() - kept.at < KEPT_MS) {
    hydrate(queries, kept.state);
    // A page that asks by POST does not wait until the server has said again who this is.
    rememberCsrf(queries.getQueryData<Me | null>(meKey)?.csrf ?? '');
    // Shown at once, and asked for again: the session may have ended meanwhile.
    void queries.invalidateQueries({ refetchType: 'none' });
  }
  let timer: ReturnType<typeof setTimeout> | undefined;
  const write = () => {
    timer = undefined;
    const me = queries.getQueryData<Me | null>(meKey);
    if (me?.kind !== 'staff') return void db.delete('seen', 'now');
    const state = dehydrate(queries, { shouldDehydrateMutation: () => false, shouldDehydrateQuery: ({ queryKey, state: { status } }) => status === 'success' && KEYS.has(queryKey[0]) });
    void db.put('seen', { at: Date.now(), state }, 'now');
  };
  queries.getQueryCache().subscribe(() => { timer ??= setTimeout(write, WRITE_MS); });
}
