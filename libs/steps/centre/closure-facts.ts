import type { Stated, Work } from '../record/work.js';

/** What the practice has heard of a centre and this order does not know yet. */
export async function closureFacts({ tx, order, facts }: Work, centre: string): Promise<Stated[]> {
  const rows = await tx.centreClosure.findMany({ where: { practiceId: order.practice, centreId: centre }, orderBy: { at: 'asc' } });
  const day = (d: Date) => d.toISOString().slice(0, 10);
  const known = new Set(facts('centreClosed').filter((f) => f.centre === centre).map((f) => `${f.from} ${f.until ?? ''}`));
  return rows.map((r) => ({ type: 'centreClosed' as const, centre, from: day(r.from), ...(r.until ? { until: day(r.until) } : {}), detail: { how: r.how } })).filter((f) => !known.has(`${f.from} ${f.until ?? ''}`));
}
