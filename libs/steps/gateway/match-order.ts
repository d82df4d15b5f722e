import type { Says } from '#libs/dicom/says';
import { uuidOf } from '#libs/dicom/uids';
import type { Tx } from '#libs/platform/database/db';

export type NoMatch = 'noNumber' | 'numberUnknown' | 'numbersDiffer';
export type Match = { order: string } | { why: NoMatch };

export const WHY_NONE: Record<NoMatch, string> = {
  noNumber: 'It carries no number of an order.',
  numberUnknown: 'Its number is that of no order here.',
  numbersDiffer: 'Its order number and its study number belong to different orders.',
};

/** The order that the image's own numbers lead to, as this practice sees orders. A name never leads anywhere: two dogs may share it. */
export async function matchOrder(tx: Tx, said: Pick<Says, 'studyInstanceUid' | 'accessionNumber'>): Promise<Match> {
  const visitId = uuidOf(said.studyInstanceUid ?? '');
  const visit = visitId ? await tx.visit.findUnique({ where: { id: visitId }, select: { orderId: true } }) : null;
  const order = said.accessionNumber ? await tx.order.findUnique({ where: { accession: said.accessionNumber }, select: { id: true } }) : null;
  if (visit && order) return visit.orderId === order.id ? { order: order.id } : { why: 'numbersDiffer' };
  // One number that is known, beside one that is not: the order number is printed, and the other one is then the machine's own.
  if (visit && said.accessionNumber) return { why: 'numbersDiffer' };
  const found = visit?.orderId ?? order?.id;
  return found ? { order: found } : { why: said.accessionNumber ? 'numberUnknown' : 'noNumber' };
}
