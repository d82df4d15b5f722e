import type { Estimate } from '#libs/contracts/booking';
import type { Prices } from '#libs/contracts/register';
import type { Work } from '../record/work.js';
import { estimateOf } from './estimate-of.js';
import { visitCharges } from './visit-charges.js';

/** Today's estimate for a visit: for what is missing of the studies that it lists, at today's prices. */
export async function visitEstimate(work: Work, visit: string): Promise<Estimate> {
  const practice = await work.tx.practice.findUniqueOrThrow({ where: { id: work.order.practice }, select: { prices: true } });
  return estimateOf({ prices: practice.prices as Prices, studies: visitCharges(work, visit) });
}
