import { useSyncExternalStore } from 'react';

/** Since when the server has not answered, by this device's clock. */
let silentSince: number | null = null;
const listeners = new Set<() => void>();

function set(since: number | null) {
  if (since === silentSince) return;
  silentSince = since;
  for (const listener of listeners) listener();
}

export const heard = () => set(null);
export const unheard = () => set(silentSince ?? Date.now());

const subscribe = (listener: () => void) => {
  listeners.add(listener);
  window.addEventListener('offline', unheard);
  return () => {
    listeners.delete(listener);
    if (listeners.size === 0) window.removeEventListener('offline', unheard);
  };
};

export const useSilentSince = () => useSyncExternalStore(subscribe, () => silentSince);
