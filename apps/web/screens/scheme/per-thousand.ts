import { fixed } from '../../design/format.js';

/** A share as so many of 1,000; small ones keep two figures that mean something. */
export function perThousand(share: number): string {
  const n = share * 1000;
  return n === 0 ? '0' : fixed(n, n >= 10 ? 0 : 1);
}
