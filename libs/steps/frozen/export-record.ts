import { Readable } from 'node:stream';
import { csv } from '#libs/contracts/csv';
import { renderFrozenRecord, type FrozenRecord } from '#libs/documents/frozen-record';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import type { FileStore } from '#libs/platform/files/file-store';
import { asJson, extensionOf, fileName, zipOf, type ZipEntry } from '#libs/platform/files/zip-of';
import { namesOf } from '../order-screen/names.js';
import { SCREEN } from '../order-screen/screen-sql.js';
import type { ScreenSource } from '../order-screen/screen-source.js';
import type { Actor } from '../record/actor.js';
import { shortDay } from '../record/day-words.js';
import { withOffset } from '../record/local-time.js';
import { readOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';
import { workOn, type Work } from '../record/work.js';
import { dogOnPaper, moment, practiceOnPaper, zoneOf } from '../report/on-paper.js';
import { nameOfFile } from '../report/document-name.js';
import { printDocument } from '../report/print-document.js';
import { frozenView } from './frozen-view.js';
import { recordTables, type RecordTable } from './record-tables.js';

interface AuditRow { at: string; name: string; role: string; action: string; subject: string | null; detail: unknown }

/** A frozen record with its whole history, for the person who answers for it and for nobody else. */
export async function exportRecord(deps: StepDeps & { files: FileStore }, actor: Actor, order: string): Promise<Readable> {
  const entries = await deps.db.practice(actor.practice, async (tx) => {
    const record = await readOrder(tx, order);
    if (!record) throw notFound();
    const work = workOn(tx, deps.clock.now(), actor, record, deps.publicUrl);
    const names = await namesIn(work);
    mayExport(work, names);
    await audit(tx, { at: work.now, by: actor.id, role: actor.roles[0] ?? 'none', action: 'exportRecord', practice: actor.practice, order, detail: { name: actor.name } });
    return entriesOf(work, deps.files, names);
  });
  return zipOf(entries, deps.clock.now());
}

function mayExport(work: Work, names: Record<string, string>): void {
  if (!work.evaluation.order.frozen) throw new StepError('NOT_AT_THIS_STEP', 'This record is not frozen. Its papers and films can be fetched one by one.');
  const speaker = frozenView(work, names)?.caseOwner;
  if (!speaker) throw new StepError('NOT_AT_THIS_STEP', 'First name who speaks with the family. That person takes the record out.');
  if (speaker.id !== work.actor.id) throw new StepError('NOT_YOUR_ROLE', `${speaker.name} speaks with the family and takes the record out.`);
}

async function namesIn(work: Work): Promise<Record<string, string>> {
  const { tx, order, actor } = work;
  const [source] = await tx.$queryRawUnsafe<ScreenSource[]>(SCREEN, order.id, actor.id, actor.roles[0] ?? 'none', actor.practice);
  return namesOf(source!, work);
}

async function entriesOf(work: Work, files: FileStore, names: Record<string, string>): Promise<ZipEntry[]> {
  const { tx, order } = work;
  const zone = zoneOf(work);
  const tables = recordTables(work, names, (at) => withOffset(at, zone).replace('T', ' '));
  const trail = await auditOf(tx, order.id);
  const papers = await tx.document.findMany({ where: { orderId: order.id }, orderBy: { at: 'asc' } });
  const kinds = new Map((await tx.image.findMany({ where: { orderId: order.id }, select: { sha256: true, kind: true } })).map((i) => [i.sha256, i.kind]));
  const pdf = await renderFrozenRecord(await onPaper(work, names, tables));
  return [
    { name: 'record.pdf', content: pdf },
    ...tables.map((t): ZipEntry => ({ name: `${t.file}.csv`, content: Buffer.from(csv(t.head, t.rows)) })),
    { name: 'audit.csv', content: Buffer.from(csv(['When', 'Who', 'Role', 'Did', 'To', 'More'], trail.map((a) => [a.at, a.name, a.role, a.action, a.subject, JSON.stringify(a.detail)]))) },
    { name: 'facts.json', content: asJson(order.facts) },
    ...papers.map((p, i): ZipEntry => ({ name: `papers/${String(i + 1).padStart(2, '0')} ${fileName(nameOfFile(p))}.pdf`, content: () => (p.pdfSha ? files.read(p.pdfSha) : printDocument(p.kind, p.snapshot).then((bytes) => Readable.from([bytes]))) })),
    ...work.facts('exposureTaken').map((f, i): ZipEntry => ({ name: `films/${String(i + 1).padStart(2, '0')} ${fileName(f.view)}.${extensionOf(kinds.get(f.image) ?? '')}`, content: () => files.read(f.image) })),
  ];
}

const auditOf = (tx: Tx, order: string): Promise<AuditRow[]> => tx.$queryRaw<AuditRow[]>`
  SELECT to_char(a.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS at, COALESCE(a.detail->>'name', (SELECT s.name FROM staff s WHERE s.id::text = a.by), a.by) AS name, a.role, a.action, a.subject, a.detail
  FROM audit a WHERE a.order_id = ${order}::uuid ORDER BY a.id`;

async function onPaper(work: Work, names: Record<string, string>, tables: RecordTable[]): Promise<FrozenRecord> {
  const view = frozenView(work, names)!;
  const said = [
    view.death && `Died on ${shortDay(view.death.day)}${view.death.inCare ? ', in our care' : ''}. Cause, as far as known: ${view.death.cause}.`,
    view.harm && `Harm, recorded ${withOffset(view.harm.at, zoneOf(work)).replace('T', ' ')}: ${view.harm.what}`,
  ].filter(Boolean).join(' ');
  return {
    paper: 'A4', issuedAt: moment(work), practice: practiceOnPaper(work), orderNumber: work.order.accession, dog: await dogOnPaper(work), said,
    speaksWithFamily: view.caseOwner!.name, madeFor: work.actor.name,
    tables: tables.map((t) => ({ title: t.title, head: t.head, widths: t.widths, rows: t.rows.map((row) => row.map((c) => (c === null ? '' : String(c)))) })),
  };
}
