import { useEffect, useMemo, useState } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { asIfStored } from './as-if-stored.js';
import { useSilentSince } from './network.js';
import { useWaiting } from './outbox.js';
import { serverTime } from './server-time.js';

const TICK_MS = 15_000;

/** The order with what waits on this tablet; without a network its clock goes on, because a dog may be asleep. */
export function useAsIfStored(screen: OrderScreen | undefined): OrderScreen | undefined {
  const all = useWaiting();
  const silent = useSilentSince() !== null;
  const [now, setNow] = useState<string>();
  const order = screen?.id;
  useEffect(() => {
    if (!silent || !order) return;
    const timer = setInterval(() => setNow(serverTime(order, Date.now())), TICK_MS);
    return () => clearInterval(timer);
  }, [silent, order]);
  return useMemo(() => screen && { ...asIfStored(screen, all.filter((w) => w.order === screen.id)), now: silent && now && now > screen.now ? now : screen.now }, [screen, all, silent, now]);
}
