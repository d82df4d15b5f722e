import { addToOutbox } from '#libs/platform/database/outbox';
import { deliverSoon } from './dispatch/start-delivery.js';
import type { StepDeps } from './record/step-deps.js';

/** Our own choice: a message that has been on its way this long belongs to a worker that died. */
const LOST_MINUTES = 3;
const MOST = 500;
/** Our own choice: how often times are looked through for those who wait, should nothing have told of a free one. */
const LINE_MINUTES = 10;

/**
 * Finds all that is due from the database alone, so that an emptied queue loses nothing: orders that time has
 * changed, reminders, messages whose moment has come or whose worker died, films on their way, papers not yet printed.
 */
export async function sweep(deps: StepDeps): Promise<Record<string, number>> {
  const now = deps.clock.now();
  return deps.db.system('sweep', async (tx) => {
    const orders = await tx.$queryRaw<{ id: string }[]>`SELECT id FROM orders WHERE wake_at <= ${now} ORDER BY wake_at LIMIT ${MOST}`;
    for (const { id } of orders) await addToOutbox(tx, 'wake-order', { order: id }, { dedupe: id });
    const studies = await tx.$queryRaw<{ id: string; order_id: string }[]>`
      SELECT s.id, s.order_id FROM study s JOIN centre c ON c.id = s.centre_id WHERE s.act = 'remind' AND s.next_day <= (${now}::timestamptz AT TIME ZONE c.zone)::date
        OR s.act = 'escalate' AND NOT EXISTS (SELECT 1 FROM message m WHERE m.once_key = 'escalation:' || s.id || ':' || s.clock || ':' || to_char(s.since AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) ORDER BY s.centre_id, s.next_day LIMIT ${MOST}`;
    for (const s of studies) await addToOutbox(tx, 'chase-study', { order: s.order_id, study: s.id }, { dedupe: s.id });
    const lost = new Date(now.getTime() - LOST_MINUTES * 60_000);
    const messages = await tx.$queryRaw<{ id: string }[]>`
      SELECT id FROM message WHERE (state = 'waiting' AND COALESCE(not_before, created_at) <= ${lost}) OR (state = 'waiting' AND not_before <= ${now}) OR (state = 'claimed' AND claimed_at <= ${lost}) ORDER BY created_at LIMIT ${MOST}`;
    for (const { id } of messages) await addToOutbox(tx, 'send-message', { message: id }, { dedupe: id });
    const deliveries = await tx.$queryRaw<{ send: string; order: string }[]>`SELECT send_id AS send, order_id AS order FROM delivery WHERE state = 'open' AND touched_at <= ${lost} ORDER BY touched_at LIMIT ${MOST}`;
    for (const { send, order } of deliveries) await deliverSoon(tx, order, send);
    const lines = await tx.$queryRaw<{ practice: string }[]>`
      SELECT DISTINCT practice_id AS practice FROM waiting_entry e WHERE state = 'waiting' AND (looked_at <= ${new Date(now.getTime() - LINE_MINUTES * 60_000)} OR EXISTS (SELECT 1 FROM slot_offer o WHERE o.entry_id = e.id AND o.state = 'open' AND o.expires_at <= ${now}))`;
    for (const { practice } of lines) await addToOutbox(tx, 'offer-slots', { practice }, { dedupe: practice });
    const papers = await tx.$queryRaw<{ id: string }[]>`SELECT id FROM document WHERE pdf_sha IS NULL AND at <= ${lost} ORDER BY at LIMIT ${MOST}`;
    for (const { id } of papers) await addToOutbox(tx, 'print-document', { document: id }, { dedupe: id });
    const calls = await tx.$queryRaw<{ id: string }[]>`SELECT id FROM webhook_delivery WHERE (state = 'waiting' AND due_at <= ${lost}) OR (state = 'sending' AND claimed_at <= ${lost}) ORDER BY due_at LIMIT ${MOST}`;
    for (const { id } of calls) await addToOutbox(tx, 'send-webhook', { delivery: id }, { dedupe: id });
    const trials = await tx.$queryRaw<{ id: string }[]>`SELECT id FROM channel_trial WHERE answer IS NULL AND at <= ${lost} LIMIT ${MOST}`;
    for (const { id } of trials) await addToOutbox(tx, 'try-channel', { trial: id }, { dedupe: id });
    await tx.$executeRaw`DELETE FROM outbox WHERE relayed_at < ${new Date(now.getTime() - 7 * 86_400_000)}`;
    return { orders: orders.length, studies: studies.length, messages: messages.length, deliveries: deliveries.length, papers: papers.length };
  });
}
