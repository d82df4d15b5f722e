import type { Hold, HoldDetail, On } from './evaluation.js';
import { type HoldCode } from './hold-codes.js';
import { holdTable } from './hold-table.js';

interface Terms { by?: string | undefined; until?: string | undefined; detail?: HoldDetail }

/** Gathers the holds of one thing; `raise` says one stands, with what the table tells about it. */
export function holdsOn(on: On): { raise: (code: HoldCode, terms?: Terms) => void; holds: Hold[] } {
  const holds: Hold[] = [];
  const raise = (code: HoldCode, { by, until, detail }: Terms = {}): void => {
    const row = holdTable[code];
    holds.push({
      code, on,
      who: [...row.who],
      ...(by === undefined ? {} : { by }),
      ...(until === undefined ? {} : { until }),
      ...(detail === undefined ? {} : { detail }),
      forbids: [...row.forbids],
      ways: [...row.ways],
    });
  };
  return { raise, holds };
}
