import { certificateFacts } from '#libs/documents/certificate-facts';
import { codeText, signFacts } from '#libs/documents/check-code';
import type { CertificateSnapshot } from '#libs/documents/snapshots';
import type { Tx } from '#libs/platform/database/db';
import { PermanentError } from '#libs/platform/queue/job-errors';
import type { WorkerDeps } from '../worker-deps.js';
import { printDocument } from './print-document.js';
import { hashOf } from './store-document.js';

interface Row { kind: string; snapshot: unknown; snapshotHash: string; serial: string | null; pdfSha: string | null }

/**
 * Prints a stored paper once. A certificate's code is signed here, because only the worker may read the key;
 * from then on its snapshot is frozen too. Printing twice gives the same bytes and is harmless.
 */
export async function finishDocument(deps: WorkerDeps, id: string): Promise<string> {
  const row = await deps.db.system('print a document', (tx) => readRow(tx, id));
  if (row.pdfSha) return row.pdfSha;
  const snapshot = row.kind === 'certificate' ? await signed(deps, row.snapshot as CertificateSnapshot) : row.snapshot;
  const pdf = await printDocument(row.kind, snapshot);
  const { sha256 } = await deps.files.put(chunks(pdf), { maxBytes: 50 * 1024 * 1024 });
  return deps.db.system('keep a printed document', async (tx) => {
    await tx.$executeRaw`UPDATE document SET snapshot = ${JSON.stringify(snapshot)}::jsonb, snapshot_hash = ${hashOf(snapshot)}, pdf_sha = ${sha256} WHERE id = ${id}::uuid AND pdf_sha IS NULL`;
    return (await readRow(tx, id)).pdfSha ?? sha256;
  });
}

async function readRow(tx: Tx, id: string): Promise<Row> {
  const row = await tx.document.findUnique({ where: { id }, select: { kind: true, snapshot: true, snapshotHash: true, serial: true, pdfSha: true } });
  if (!row) throw new PermanentError('The paper to print is not there.');
  return row;
}

async function signed(deps: WorkerDeps, snapshot: CertificateSnapshot): Promise<CertificateSnapshot> {
  const key = await deps.db.system('sign a certificate', async (tx) => (await tx.scheme.findFirst({ select: { signingKey: true } }))?.signingKey);
  if (!key) throw new PermanentError('This installation has no key to sign certificates with.');
  return { ...snapshot, code: codeText(`${deps.publicUrl}/c`, snapshot.serial, signFacts(certificateFacts(snapshot), snapshot.lang, key)) };
}

async function* chunks(content: Buffer): AsyncIterable<Uint8Array> {
  yield await Promise.resolve(content);
}

