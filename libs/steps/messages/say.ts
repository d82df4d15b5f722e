import { addToOutbox } from '#libs/platform/database/outbox';
import type { Tx } from '#libs/platform/database/db';
import type { TemplateName } from './templates.js';

export interface Saying {
  /** What makes it once ever: two requests for the same thing are one message. */
  once: string;
  kind: string;
  template: TemplateName;
  order: string | null;
  practice: string | null;
  to: { person?: string; name: string; email: string };
  data: Record<string, unknown>;
  documents?: string[];
  /** The study, visit or letter that this is about: asked about again when it is sent. */
  subject?: string;
  notBefore?: Date;
}

/** Writes down that somebody is to be told something; the worker tells them, after the commit, at most once. */
export async function say(tx: Tx, s: Saying): Promise<void> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    INSERT INTO message (order_id, practice_id, once_key, kind, person_id, to_name, to_email, subject, body, documents, subject_id, not_before)
    VALUES (${s.order}::uuid, ${s.practice}::uuid, ${s.once}, ${s.kind}, ${s.to.person ?? null}::uuid, ${s.to.name}, ${s.to.email}, '', ${JSON.stringify({ template: s.template, data: s.data })}::jsonb,
      ${s.documents ?? []}::uuid[], ${s.subject ?? null}, ${s.notBefore ?? null})
    ON CONFLICT (once_key) DO NOTHING RETURNING id`;
  if (rows[0]) await addToOutbox(tx, 'send-message', { message: rows[0].id }, { dedupe: rows[0].id, ...(s.notBefore ? { notBefore: s.notBefore } : {}) });
}
