import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { MailboxScreen, MailScreen } from '#libs/contracts/screens/board';
import type { Db, Scope } from '#libs/platform/database/db';
import { notFound } from '../record/step-error.js';

interface Row { id: string; at: string; from: string; to: string; subject: string; text: string; html: string | null; files: { name: string; type: string; size: number; content: string }[] }
const COLUMNS = `id, to_char(at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS at, "from", "to", subject`;

const PAGE = 100;

/** Mail that this server caught instead of sending: a practice's own, or in the demo all. */
export async function listMail(db: Db, scope: Scope, captured: boolean, page = 1, perPage = PAGE): Promise<MailboxScreen> {
  const rows = await db.read<Row & { n: number }>(scope, `SELECT ${COLUMNS}, jsonb_array_length(files) AS n FROM captured_mail ORDER BY captured_mail.at DESC, id LIMIT $1 OFFSET $2`, [perPage + 1, (page - 1) * perPage]);
  return { captured, more: rows.length > perPage, rows: rows.slice(0, perPage).map(({ id, at, to, subject, n }) => ({ id, at, to, subject, attachments: n })) };
}

/** The same list as a file for a spreadsheet; the letters themselves are not in it. */
export async function mailAsCsv(db: Db, scope: Scope): Promise<string> {
  const { rows, more } = await listMail(db, scope, true, 1, MOST_ROWS);
  return csv(['Written', 'To', 'Subject', 'Files'], rows.map((r) => [r.at, r.to, r.subject, r.attachments]), more);
}

export async function readMail(db: Db, scope: Scope, id: string): Promise<MailScreen> {
  const m = await mail(db, scope, id);
  return {
    id: m.id, at: m.at, to: m.to, from: m.from, subject: m.subject, text: m.text, html: m.html, attachments: m.files.length,
    links: [...new Set(m.text.match(/https?:\/\/[^\s<>"]+/g) ?? [])],
    files: m.files.map(({ name, type, size }, n) => ({ n, name, type, size })),
  };
}

export async function mailFile(db: Db, scope: Scope, id: string, n: number): Promise<{ name: string; type: string; content: Buffer }> {
  const file = (await mail(db, scope, id)).files[n];
  if (!file) throw notFound();
  return { name: file.name, type: file.type, content: Buffer.from(file.content, 'base64') };
}

async function mail(db: Db, scope: Scope, id: string): Promise<Row> {
  const [row] = await db.read<Row>(scope, `SELECT ${COLUMNS}, text, html, files FROM captured_mail WHERE id = $1::uuid`, [id]);
  if (!row) throw notFound();
  return row;
}
