import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { useSyncExternalStore } from 'react';
import type { Waiting } from './witnessed.js';

interface Tablet extends DBSchema {
  waiting: { key: number; value: Waiting };
}

let opened: Promise<IDBPDatabase<Tablet>> | undefined;
const tablet = () =>
  (opened ??= openDB<Tablet>('cotyla-tablet', 1, {
    upgrade: (db) => void db.createObjectStore('waiting', { keyPath: 'seq', autoIncrement: true }),
  }));

let entries: readonly Waiting[] = [];
const listeners = new Set<() => void>();
const otherTabs = new BroadcastChannel('cotyla-tablet');
otherTabs.onmessage = () => void reload();

async function reload(): Promise<void> {
  entries = await (await tablet()).getAll('waiting');
  for (const listener of listeners) listener();
}

async function change(write: (db: IDBPDatabase<Tablet>) => Promise<unknown>): Promise<void> {
  await write(await tablet());
  await reload();
  otherTabs.postMessage('changed');
}

/** What waits, oldest first. */
export async function readWaiting(): Promise<readonly Waiting[]> {
  await reload();
  return entries;
}

export async function keepForLater(entry: Waiting): Promise<void> {
  // A browser may throw away what it was not asked to keep.
  await navigator.storage.persist();
  await change((db) => db.add('waiting', entry));
}

export const markRefused = (entry: Waiting, why: string) => change((db) => db.put('waiting', { ...entry, refused: why }));
export const takeOff = ({ seq }: Waiting) => change(async (db) => seq !== undefined && (await db.delete('waiting', seq)));
export const tryAgain = ({ refused: _, ...entry }: Waiting) => change((db) => db.put('waiting', entry));

const subscribe = (listener: () => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Every entry on this tablet; stays the same array until something changes. */
export const useWaiting = () => useSyncExternalStore(subscribe, () => entries);
