import { evaluate } from '#libs/pathway/evaluate';
import { isOpenVisit } from '#libs/pathway/steps';
import type { Evaluation } from '#libs/pathway/evaluation';
import type { Tx } from '#libs/platform/database/db';
import type { FileStore } from '#libs/platform/files/file-store';
import { readOrder, type OrderRecord } from '#libs/steps/record/order-record';
import type { Acknowledged } from './front-door.js';

/** Where things stand, without the words and times that change by themselves. */
const stepsOf = (e: Evaluation) => JSON.stringify([e.order.step, Object.values(e.visits).map((v) => [v.id, v.step]).sort(), Object.values(e.studies).map((s) => [s.id, s.step]).sort()]);

/** What somebody was told has been done, and is not there. */
export async function lostFacts(tx: Tx, acknowledged: Acknowledged[]): Promise<string[]> {
  const rows = await tx.$queryRaw<{ order: string; action: string; key: string; version: number; facts: number }[]>`
    SELECT a.*, (SELECT count(*)::int FROM fact f WHERE f.order_id = a."order") AS facts
    FROM jsonb_to_recordset(${JSON.stringify(acknowledged)}::jsonb) AS a("order" uuid, action text, key text, version int)
    WHERE NOT EXISTS (SELECT 1 FROM fact f WHERE f.order_id = a."order" AND f.id = a.key) OR (SELECT count(*) FROM fact f WHERE f.order_id = a."order") < a.version`;
  return rows.map(({ order, action, key, version, facts }) => `${order}: ${action} ${key}, version ${version}, facts ${facts}`);
}

export type Look = <T>(work: (tx: Tx) => Promise<T>) => Promise<T>;

/** Whatever the facts of an order say otherwise than the rows made from them; one look for each order, because there may be thousands. */
export async function halfWritten(look: Look, now: Date): Promise<string[]> {
  const found: string[] = [];
  for (const { id } of await look((tx) => tx.order.findMany({ select: { id: true } }))) {
    await look(async (tx) => {
      const record = (await readOrder(tx, id))!;
      const stored = await tx.order.findUniqueOrThrow({ where: { id } });
      found.push(...(await unlike(tx, record, stored as typeof stored & { evaluation: object }, now)).map((what) => `${record.accession}: ${what}`));
    });
  }
  const stray = await look((tx) => tx.$queryRaw<{ visit: string }[]>`SELECT visit_id::text AS visit FROM slot s WHERE NOT EXISTS (SELECT 1 FROM visit v WHERE v.id = s.visit_id AND v.order_id = s.order_id AND v.step <> 'wanted')`);
  return [...found, ...stray.map(({ visit }) => `a slot of no booking: visit ${visit}`)];
}

async function unlike(tx: Tx, record: OrderRecord, stored: { version: number; step: string; evaluation: object }, now: Date): Promise<string[]> {
  const found: string[] = [];
  const fresh = evaluate(record.facts, now.toISOString(), record.rules);
  if (stored.version !== record.facts.length) found.push(`version ${stored.version}, facts ${record.facts.length}`);
  if (stored.step !== fresh.order.step || stepsOf(stored.evaluation as Evaluation) !== stepsOf(fresh)) found.push('the stored answer is not what the facts say');
  const rows = [...(await tx.visit.findMany({ where: { orderId: record.id } })), ...(await tx.study.findMany({ where: { orderId: record.id } }))];
  const all: Record<string, { step: string }> = { ...fresh.visits, ...fresh.studies };
  if (rows.length !== Object.keys(all).length || rows.some((row) => all[row.id]?.step !== row.step)) found.push('a visit or study stands elsewhere than the facts say');
  for (const visit of Object.values(fresh.visits).filter((v) => v.day && isOpenVisit(v.step))) {
    const slots = await tx.slot.count({ where: { visitId: visit.id } });
    if (slots === 0) found.push(`visit ${visit.id} is booked and has no slot`);
  }
  return found;
}

export async function missingFiles(tx: Tx, files: FileStore): Promise<string[]> {
  const images = await tx.image.findMany({ select: { sha256: true, previewSha: true } });
  const papers = await tx.document.findMany({ select: { id: true, pdfSha: true } });
  const named = [...images.flatMap((i) => [i.sha256, i.previewSha]), ...papers.map((p) => p.pdfSha)].filter((sha) => sha !== null);
  const there = await Promise.all(named.map((sha) => files.exists(sha)));
  return [...named.filter((_, i) => !there[i]), ...papers.filter((p) => !p.pdfSha).map((p) => `paper ${p.id} is not printed`)];
}

export interface MailFigures { written: number; delivered: number; unknown: number; dropped: number; bounced: number; later: number; lost: string[]; twice: string[] }

const EXPECTED = ['confirmation', 'package', 'result'];

/** Each message against what the mail server holds; none may be gone without a word, none may be there twice. */
export async function mailFigures(tx: Tx, held: string[], walked: string[], now: Date): Promise<MailFigures> {
  const messages = await tx.message.findMany({ select: { id: true, orderId: true, kind: true, state: true, detail: true, notBefore: true } });
  const taken = new Map<string, number>();
  for (const id of held) taken.set(id, (taken.get(id) ?? 0) + 1);
  const of = (state: string) => messages.filter((m) => m.state === state);
  const later = of('waiting').filter((m) => m.notBefore && m.notBefore > now);
  const lost = [
    ...of('delivered').filter((m) => !held.some((h) => h.includes(m.id))).map((m) => `${m.kind} ${m.id} is said to have been delivered`),
    ...of('waiting').filter((m) => !later.includes(m)).map((m) => `${m.kind} ${m.id} waits for nothing`),
    ...of('claimed').map((m) => `${m.kind} ${m.id} is on its way for ever`),
    ...[...of('dropped'), ...of('unknown')].filter((m) => !m.detail).map((m) => `${m.kind} ${m.id} is ${m.state} without a reason`),
    ...walked.flatMap((order) => EXPECTED.filter((kind) => !messages.some((m) => m.orderId === order && m.kind === kind)).map((kind) => `${order} has no ${kind}`)),
  ];
  // A mail that is held, and whose row says that it may go, would go again.
  const again = of('waiting').filter((m) => held.some((h) => h.includes(m.id))).map((m) => `${m.kind} ${m.id} would be sent again`);
  return {
    written: messages.length, delivered: of('delivered').length, unknown: of('unknown').length, dropped: of('dropped').length, bounced: of('bounced').length, later: later.length,
    lost, twice: [...[...taken].filter(([, n]) => n > 1).map(([id, n]) => `${id}: ${n} times`), ...again],
  };
}
