import { maySend, type MaySend, type Message, type MessageKind } from '#libs/pathway/silence';
import type { Fact, FactOf } from '#libs/pathway/facts';
import type { Tx } from '#libs/platform/database/db';
import { readOrder } from '../record/order-record.js';
import type { MessageRow } from './message-row.js';

const ASKED: ReadonlySet<string> = new Set<MessageKind>(['result', 'correction', 'filmsRejected', 'missingViews', 'bill', 'confirmation', 'reminder', 'preparation', 'consentLink', 'survey', 'goingHome', 'centreClosed', 'chase']);

/** Somebody whose data are kept and not used gets no mail; the going-home sheet is the dog's safety and goes. */
type Answer = MaySend | { send: false; reason: 'RESTRICTED'; then: 'keep' };

/** Asked again in the transaction that claims the row: a dog may have died, an addressee changed, since it was decided. */
export async function askSilence(tx: Tx, m: MessageRow, now: Date): Promise<Answer> {
  const answer = await askOrder(tx, m, now);
  if (!answer.send || !m.personId || m.kind === 'goingHome') return answer;
  const [asked] = await tx.$queryRaw<{ restricted: boolean }[]>`SELECT app.is_restricted(${m.personId}::uuid) AS restricted`;
  return asked!.restricted ? { send: false, reason: 'RESTRICTED', then: 'keep' } : answer;
}

async function askOrder(tx: Tx, m: MessageRow, now: Date): Promise<MaySend> {
  if (!m.orderId || !ASKED.has(m.kind) || m.kind === 'chase') return { send: true };
  const order = await readOrder(tx, m.orderId);
  if (!order) return { send: false, reason: 'VISIT_OVER', then: 'drop' };
  const data = m.body.data as { visit?: string; study?: string };
  const letter = order.facts.find((f) => f.type === 'letterReleased' && f.letter === m.subjectId) as { result?: string } | undefined;
  // A link that was asked for by hand is sent whatever has been answered.
  if (m.kind === 'consentLink' && !data.visit) return order.facts.some((f) => f.type === 'dogDied') ? { send: false, reason: 'DEATH', then: 'drop' } : { send: true };
  const message: Message = { kind: m.kind as MessageKind, to: m.personId ?? '', ...(data.visit ? { visit: data.visit } : {}), ...(data.study ? { study: data.study } : {}), ...(letter?.result ? { result: letter.result } : {}) };
  if (m.kind === 'reminder' && isOldTime(order.facts, data as { visit?: string; day?: string; start?: string })) return { send: false, reason: 'VISIT_OVER', then: 'drop' };
  return maySend(message, order.facts, now.toISOString(), order.rules);
}

/** A reminder of a time from which the visit has been moved away. */
function isOldTime(facts: readonly Fact[], data: { visit?: string; day?: string; start?: string }): boolean {
  const booked = facts.filter((f): f is FactOf<'visitBooked'> => f.type === 'visitBooked' && f.visit === data.visit).at(-1);
  return booked !== undefined && (booked.day !== data.day || booked.start !== data.start);
}
