import { performedState, readPerformed, stepNumbers, type PerformedSaid, type PerformedState, type StepNumbers } from '#libs/dicom/performed-step';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import type { StepDeps } from '../record/step-deps.js';
import type { Sender } from './find-console.js';
import { matchOrder, type Match } from './match-order.js';

type Elements = Record<string, unknown>;
export type Refused = 'notBegun' | 'thereAlready' | 'unknown' | 'ended' | 'noState';

/** A machine has begun to work on a dog. */
export async function beginPerformed(deps: StepDeps, sender: Sender, sopUid: string, elements: Elements): Promise<Refused | undefined> {
  if (performedState(elements) !== 'inProgress') return 'notBegun';
  return deps.db.practice(sender.practice, async (tx) => {
    const match = await orderOf(tx, sender.practice, stepNumbers(elements));
    const led = 'order' in match ? { orderId: match.order, why: null } : { orderId: null, why: match.why };
    return (await note(tx, deps, sender, { sopUid, place: 0, state: 'inProgress', ...led, said: readPerformed(elements) })) ? undefined : 'thereAlready';
  });
}

/** What it says of that work afterwards. Once it has said that the work is ended, nothing more is taken. */
export async function continuePerformed(deps: StepDeps, sender: Sender, sopUid: string, elements: Elements): Promise<Refused | undefined> {
  const state = performedState(elements) ?? 'inProgress';
  if (state === 'unknown') return 'noState';
  return deps.db.practice(sender.practice, async (tx) => {
    // one after the other: two that say different ends would both be last
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${sender.practice} ${sopUid}`}, 0))`;
    const before = await tx.performedStep.findMany({ where: { practiceId: sender.practice, sopUid }, orderBy: { place: 'asc' } });
    if (before.length === 0) return 'unknown';
    if (before.some((row) => row.state !== 'inProgress')) return 'ended';
    const said = readPerformed(elements);
    const orderId = before.find((row) => row.orderId)?.orderId ?? (await orderOfImages(tx, sender.practice, said.images ?? []));
    await note(tx, deps, sender, { sopUid, place: before.length, state, orderId, why: null, said });
    return undefined;
  });
}

interface Row { sopUid: string; place: number; state: PerformedState; orderId: string | null; why: string | null; said: PerformedSaid }

async function note(tx: Tx, { clock }: StepDeps, { practice, console, name }: Sender, row: Row): Promise<boolean> {
  const { count } = await tx.performedStep.createMany({ data: [{ ...row, said: { ...row.said }, practiceId: practice, consoleId: console, at: clock.now() }], skipDuplicates: true });
  if (count > 0) await audit(tx, { by: console, role: 'queue', action: 'hearPerformed', practice, order: row.orderId, subject: row.sopUid, detail: { from: name, state: row.state } });
  return count > 0;
}

/** By its numbers as an image finds its order; a machine that drops the study's number has the one of the scheduled step. */
async function orderOf(tx: Tx, practice: string, numbers: StepNumbers): Promise<Match> {
  const match = await matchOrder(tx, numbers);
  if ('order' in match || match.why !== 'noNumber' || !numbers.scheduledStep) return match;
  const [visit] = await tx.$queryRaw<{ order: string }[]>`SELECT order_id AS order FROM visit WHERE practice_id = ${practice}::uuid AND open AND right(replace(id::text, '-', ''), 16) = lower(${numbers.scheduledStep})`;
  return visit ? { order: visit.order } : { why: 'numberUnknown' };
}

/** One that began without numbers belongs where all of its images went. */
export async function orderOfImages(tx: Tx, practice: string, images: string[]): Promise<string | null> {
  const rows = await tx.receivedImage.findMany({ where: { practiceId: practice, sopUid: { in: images } }, select: { orderId: true, settledOrder: true } });
  const orders = new Set(rows.map((row) => row.orderId ?? row.settledOrder));
  return orders.size === 1 ? [...orders][0]! : null;
}
