import { buffer } from 'node:stream/consumers';
import ical, { ICalCalendarMethod, ICalEventStatus } from 'ical-generator';
import type { Tx } from '#libs/platform/database/db';
import { messageIdOf, type OutgoingMail } from '#libs/platform/mail/mailer';
import { newToken } from '#libs/platform/passwords/token';
import type { Told } from '../fees/account/told.js';
import { instantOf } from '../record/local-time.js';
import { nameOfFile } from '../report/document-name.js';
import { finishDocument } from '../report/finish-document.js';
import type { WorkerDeps } from '../worker-deps.js';
import { mailHtml, mailText } from './mail-html.js';
import type { MessageRow } from './message-row.js';
import { asLanguage } from '#libs/words/languages';
import { wordsIn, type Words } from '#libs/words/words';
import { renderMail } from './templates.js';

const WITH_OWNER_LINK = new Set(['confirmation', 'reminder', 'slotOffer', 'missed', 'ownerLink', 'result', 'correction', 'filmsRejected', 'transferSeller', 'transferBuyer', 'newPractice', 'centreClosed']);
const DAYS = { owner: 120, reader: 60, join: 14 };

/** Text, links, papers and calendar file of a claimed message. Links are made now, so that no token is ever stored. */
export async function writeMail(deps: WorkerDeps, m: MessageRow): Promise<OutgoingMail> {
  const papers = await Promise.all(m.documents.map((id) => paper(deps, id)));
  const now = deps.clock.now();
  const { language, practice, told, ownerLink, ownerLinks, readerLink, joinLink } = await deps.db.system('write a mail', async (tx) => ({
    language: m.personId ? (await tx.person.findUnique({ where: { id: m.personId }, select: { language: true } }))?.language : undefined,
    practice: m.practiceId ? await tx.practice.findUnique({ where: { id: m.practiceId }, select: { name: true, phone: true, address: true, email: true } }) : null,
    told: m.body.template === 'statement' ? await toldBy(tx, m) : undefined,
    ownerLink: WITH_OWNER_LINK.has(m.body.template) && m.personId ? await ownerLinkFor(tx, deps.publicUrl, m, now) : undefined,
    ownerLinks: m.body.template === 'groupBooked' ? await groupLinksFor(tx, deps.publicUrl, m, now) : undefined,
    joinLink: m.body.template === 'join' || m.body.template === 'joinPractice' ? await joinLinkFor(tx, deps.publicUrl, m, now) : undefined,
    readerLink: m.body.template === 'package' || m.body.template === 'secondReading' ? await readerLinkFor(tx, deps.publicUrl, m, now) : undefined,
  }));
  const t = wordsIn(asLanguage(language));
  const { subject, paragraphs } = renderMail(m.body.template, { t, data: m.body.data, toName: m.toName, practice, ...(told ? { told } : {}), ...(ownerLink ? { ownerLink } : {}), ...(ownerLinks ? { ownerLinks } : {}), ...(readerLink ? { readerLink } : {}), ...(joinLink ? { joinLink } : {}) });
  await deps.db.system('note a subject', (tx) => tx.$executeRaw`UPDATE message SET subject = ${subject} WHERE id = ${m.id}::uuid`);
  const calendar = calendarOf(m, practice, t);
  return {
    messageId: messageIdOf(m.id, deps.mailDomain), to: m.toEmail, subject, text: mailText(paragraphs), html: mailHtml(subject, paragraphs, t.language),
    ...(practice ? { replyTo: practice.email } : {}), ...(papers.length > 0 ? { attachments: papers } : {}), ...(calendar ? { calendar } : {}),
  };
}

async function paper(deps: WorkerDeps, id: string): Promise<{ filename: string; contentType: string; content: Buffer }> {
  const sha = await finishDocument(deps, id);
  const name = nameOfFile(await deps.db.system('name an attachment', (tx) => tx.document.findUniqueOrThrow({ where: { id }, select: { name: true, named: true, snapshot: true } })));
  return { filename: `${name.replace(/[^\p{L}\p{N} ,-]/gu, '')}.pdf`, contentType: 'application/pdf', content: await buffer(await deps.files.read(sha)) };
}

/** What was frozen when the statement was asked for. */
async function toldBy(tx: Tx, m: MessageRow): Promise<Told> {
  const { told } = await tx.feeStatement.findUniqueOrThrow({ where: { practiceId_id: { practiceId: m.practiceId!, id: String(m.body.data.statement) } }, select: { told: true } });
  return told as unknown as Told;
}

async function ownerLinkFor(tx: Tx, publicUrl: string, m: MessageRow, now: Date): Promise<string> {
  if (m.body.template === 'ownerLink') await tx.link.updateMany({ where: { orderId: m.orderId!, personId: m.personId, kind: 'owner', revokedAt: null }, data: { revokedAt: now } });
  const { token, hash } = newToken();
  await tx.link.create({ data: { tokenHash: hash, kind: 'owner', practiceId: m.practiceId!, orderId: m.orderId!, personId: m.personId, expiresAt: inDays(now, DAYS.owner) } });
  return `${publicUrl}/o/${token}`;
}

interface GroupLine { order?: string; visit: string; dog: string; day: string; start: string; zone: string; minutes: number }
const bookedLines = (m: MessageRow): (GroupLine & { order: string })[] => (m.body.data.lines as GroupLine[]).flatMap((l) => (l.order ? [{ ...l, order: l.order }] : []));

/** A page for each dog that was booked. */
async function groupLinksFor(tx: Tx, publicUrl: string, m: MessageRow, now: Date): Promise<Map<string, string>> {
  const links = new Map<string, string>();
  for (const { order } of bookedLines(m)) links.set(order, await ownerLinkFor(tx, publicUrl, { ...m, orderId: order }, now));
  return links;
}

async function readerLinkFor(tx: Tx, publicUrl: string, m: MessageRow, now: Date): Promise<string> {
  const data = m.body.data as { package: string; centre: string };
  const { token, hash } = newToken();
  await tx.link.create({ data: { tokenHash: hash, kind: 'reader', practiceId: m.practiceId!, orderId: m.orderId!, packageId: data.package, centreId: data.centre, expiresAt: inDays(now, DAYS.reader) } });
  return `${publicUrl}/r/${token}`;
}

async function joinLinkFor(tx: Tx, publicUrl: string, m: MessageRow, now: Date): Promise<string> {
  const { token, hash } = newToken();
  await tx.link.create({ data: { tokenHash: hash, kind: 'join', staffId: m.subjectId, expiresAt: inDays(now, DAYS.join) } });
  return `${publicUrl}/join/${token}`;
}

const inDays = (now: Date, days: number): Date => new Date(now.getTime() + days * 86_400_000);

/** The same visit is the same calendar entry for life; moving it raises its sequence. */
function calendarOf(m: MessageRow, practice: { name: string; address: string; email: string } | null, t: Words): OutgoingMail['calendar'] {
  if (!practice || !['confirmation', 'cancelled', 'groupBooked'].includes(m.body.template)) return undefined;
  const cancelled = m.body.template === 'cancelled';
  const visits = (m.body.template === 'groupBooked' ? bookedLines(m) : [m.body.data]) as { visit: string; dog: string; day?: string; start: string; zone?: string; minutes?: number; sequence?: number }[];
  const calendar = ical({ name: practice.name, method: cancelled ? ICalCalendarMethod.CANCEL : ICalCalendarMethod.REQUEST });
  for (const { visit, dog, day, start: time, zone, minutes, sequence } of visits) {
    if (!day) return undefined;
    const start = instantOf(day, time, zone ?? 'UTC');
    calendar.createEvent({
      id: `visit-${visit}`, sequence: sequence ?? 0, start, end: new Date(start.getTime() + (minutes ?? 45) * 60_000), stamp: new Date(),
      summary: t('{dog} at {practice}', { dog, practice: practice.name }), location: practice.address, organizer: { name: practice.name, email: practice.email },
      attendees: [{ name: m.toName, email: m.toEmail, rsvp: true }], ...(cancelled ? { status: ICalEventStatus.CANCELLED } : {}),
    });
  }
  return { method: cancelled ? 'CANCEL' : 'REQUEST', content: calendar.toString() };
}
