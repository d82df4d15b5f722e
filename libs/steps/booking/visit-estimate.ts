import type { Estimate } from '#libs/contracts/booking';
import type { Prices } from '#libs/contracts/register';
import type { Work } from '../record/work.js';
import { estimateOf } from './estimate-of.js';

/** Today's estimate for a visit: for the studies that it lists, at today's prices. */
export async function visitEstimate({ tx, order, evaluation }: Work, visit: string): Promise<Estimate> {
  const practice = await tx.practice.findUniqueOrThrow({ where: { id: order.practice }, select: { prices: true } });
  const studies = (evaluation.visits[visit]?.studies ?? []).flatMap((id) => {
    const study = evaluation.studies[id];
    const centre = study && order.centres[study.centre];
    return study && centre ? [{ protocol: study.protocol, version: study.version, centre }] : [];
  });
  return estimateOf({ prices: practice.prices as Prices, studies });
}
