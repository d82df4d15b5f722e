import type { Tx } from '../database/db.js';

export interface AuditEntry {
  by: string;
  role: string;
  action: string;
  practice?: string | null;
  order?: string | null;
  subject?: string | null;
  detail?: Record<string, unknown>;
  /** The moment of the change that it belongs to; left out, now. */
  at?: Date;
}

/** One row for every change and every view of personal data; appended, and never read back by who wrote it. */
export async function audit(tx: Tx, entry: AuditEntry): Promise<void> {
  await tx.$executeRaw`INSERT INTO audit (at, practice_id, order_id, by, role, action, subject, detail)
    VALUES (COALESCE(${entry.at ?? null}::timestamptz, now()), ${entry.practice ?? null}::uuid, ${entry.order ?? null}::uuid, ${entry.by}, ${entry.role}, ${entry.action}, ${entry.subject ?? null}, ${JSON.stringify(entry.detail ?? {})}::jsonb)`;
}
