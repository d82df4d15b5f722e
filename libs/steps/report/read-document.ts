import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import { audit } from '#libs/platform/audit/audit';
import { documentName } from './document-name.js';
import { notFound, StepError } from '../record/step-error.js';

export interface StoredDocument { id: string; kind: string; name: string; snapshot: unknown; pdfSha: string | null }

/** A paper of an order for somebody who may see the order; who opened it is written down. */
export async function readDocument(tx: Tx, who: { id: string; role: string; practice: string }, order: string, id: string): Promise<StoredDocument> {
  const row = await tx.document.findFirst({ where: { id, orderId: order } });
  if (!row) throw notFound();
  await audit(tx, { by: who.id, role: who.role, action: 'openDocument', practice: who.practice, order, subject: id });
  // A certificate's code is signed by the worker, a moment after its letter was released.
  if (row.kind === 'certificate' && !row.pdfSha) throw new StepError('NOT_AT_THIS_STEP', 'This paper is being printed. Try again in a moment.');
  return { id: row.id, kind: row.kind, name: documentName(row, t), snapshot: row.snapshot, pdfSha: row.pdfSha };
}
