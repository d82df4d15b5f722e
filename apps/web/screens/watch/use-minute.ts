import { useEffect, useState } from 'react';
import { serverTime } from '../../offline/server-time.js';

const TICK_MS = 10_000;

/** The server's clock as it goes on here, so that minutes count beside the dog without asking. */
export function useMinute(order: string, seen: string): string {
  const [now, setNow] = useState(seen);
  useEffect(() => {
    const timer = setInterval(() => setNow(serverTime(order, Date.now())), TICK_MS);
    return () => clearInterval(timer);
  }, [order]);
  return now > seen ? now : seen;
}
