import type { Estimate } from '#libs/contracts/booking';
import type { Prices } from '#libs/contracts/register';
import { findProtocol, nameAtDesk } from '#libs/science/protocols/catalogue';

export interface EstimateFor {
  prices: Prices;
  studies: {
    protocol: string;
    version: string;
    centre: { name: string; feeMinor: number };
    /** Views to take; all that are required where nothing is said. */
    views?: string[];
    /** False where it was agreed to with an earlier visit. */
    reading?: boolean;
    sending?: boolean;
  }[];
}

/**
 * What a visit is expected to cost, in integer minor units. A view that two studies share is taken, and paid, once.
 * Tax is on the sum and rounded once, halves up.
 */
export function estimateOf({ prices, studies }: EstimateFor): Estimate {
  const views = new Set(studies.flatMap((s) => s.views ?? findProtocol(s.protocol, s.version)?.views.filter((v) => v.required).map((v) => v.code) ?? []));
  const centres = [...new Set(studies.filter((s) => s.sending !== false).map((s) => s.centre.name))];
  const sending = { words: centres.length > 1 ? `Sending, ${centres.length} centres` : 'Sending', amountMinor: centres.length * prices.sendingMinor };
  const lines = [
    { words: 'Sedation, with monitoring', amountMinor: prices.sedationMinor },
    { words: `${views.size} ${views.size === 1 ? 'radiograph' : 'radiographs'}`, amountMinor: views.size * prices.radiographMinor },
    ...studies.filter((s) => s.reading !== false).map((s) => ({ words: `Reading of ${nameAtDesk(s)}, ${s.centre.name}`, amountMinor: s.centre.feeMinor })),
    ...(centres.length > 0 ? [sending] : []),
  ];
  const net = lines.reduce((sum, line) => sum + line.amountMinor, 0);
  const tax = Math.round((net * prices.taxPercent) / 100);
  return { lines: [...lines, { words: `Tax ${prices.taxPercent}%`, amountMinor: tax }], total: { amountMinor: net + tax, currency: prices.currency } };
}
