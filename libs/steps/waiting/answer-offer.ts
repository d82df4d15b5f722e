import type { z } from 'zod';
import type { answerOffer, OwnerOffer } from '#libs/contracts/waiting';
import { decide } from '#libs/pathway/decide';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import { book } from '../booking/book.js';
import { ownerActor, type Owner } from '../owner-page/owner.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';
import { workOn, type Work } from '../record/work.js';
import { lookForTheWaiting } from './offer-slots.js';
import type { OfferedSlot } from './waiting-rows.js';

type Open = { id: string; entry: string; visit: string; slot: OfferedSlot; state: string; expires: Date };

/** The owner's yes moves the visit, with its answers and signatures; a no passes the time on. */
export async function ownerAnswersOffer(deps: StepDeps, owner: Owner, input: z.output<typeof answerOffer>): Promise<OwnerOffer> {
  try {
    await deps.db.practice(owner.practice, (tx) => answer(tx, deps, owner, input));
  } catch (error) {
    if (!(error instanceof StepError) || error.code !== 'SLOT_TAKEN') throw error;
    await deps.db.practice(owner.practice, async (tx) => {
      await close(tx, input.offer, 'taken', deps.clock.now());
      await lookForTheWaiting(tx, owner.practice);
    });
    throw new StepError('SLOT_TAKEN', t('That time was taken meanwhile, by phone. Your visit stays as it is, and you stay on the list.'));
  }
  return readOffer(deps, owner);
}

async function answer(tx: Tx, deps: StepDeps, owner: Owner, input: z.output<typeof answerOffer>): Promise<void> {
  const order = await lockOrder(tx, owner.order);
  if (!order) throw notFound();
  const now = deps.clock.now();
  const [offer] = await tx.$queryRaw<Open[]>`SELECT o.id, e.id AS entry, e.visit_id AS visit, o.slot, o.state, o.expires_at AS expires FROM slot_offer o JOIN waiting_entry e ON e.id = o.entry_id
    WHERE o.id = ${input.offer}::uuid AND o.order_id = ${owner.order}::uuid FOR UPDATE OF o`;
  if (!offer) throw notFound();
  // The same answer again, because the first reply got lost.
  if (offer.state === (input.answer === 'yes' ? 'accepted' : 'declined')) return;
  if (offer.state !== 'open' || offer.expires <= now) throw new StepError('NOT_AT_THIS_STEP', t('This offer has run out. Your visit stays as it is; phone the practice if you need another time.'));
  if (input.answer === 'yes') await take(workOn(tx, now, ownerActor(owner), order, deps.publicUrl), offer);
  await close(tx, offer.id, input.answer === 'yes' ? 'accepted' : 'declined', now);
  await lookForTheWaiting(tx, owner.practice);
}

async function take(work: Work, { entry, visit, slot }: Open): Promise<void> {
  // The practice made the offer: moving is the desk's, the yes is the owner's.
  if (!decide(work.evaluation, 'book', { scope: 'visit', id: visit }, 'desk').allowed) throw new StepError('NOT_AT_THIS_STEP', t('The visit cannot be moved any more. Please phone the practice.'));
  await append(work, await book(work, visit, slot), { action: 'book', role: 'owner' });
  await work.tx.waitingEntry.update({ where: { id: entry }, data: { state: 'served', doneAt: work.now } });
}

const close = (tx: Tx, offer: string, state: string, now: Date) => tx.slotOffer.updateMany({ where: { id: offer, state: 'open' }, data: { state, answeredAt: now } });

const OFFER = `SELECT o.id, o.slot->>'day' AS day, o.slot->>'start' AS start, to_char(o.expires_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS "expiresAt",
  CASE WHEN v.day IS NOT NULL THEN jsonb_build_object('day', v.day, 'start', v.start) END AS "insteadOf"
FROM slot_offer o JOIN waiting_entry e ON e.id = o.entry_id JOIN visit v ON v.id = e.visit_id WHERE o.order_id = $1::uuid AND o.state = 'open' AND o.expires_at > $2`;

export async function readOffer(deps: StepDeps, owner: Owner): Promise<OwnerOffer> {
  const [offer] = await deps.db.read<NonNullable<OwnerOffer['offer']>>({ practice: owner.practice }, OFFER, [owner.order, deps.clock.now()]);
  return { offer: offer ?? null };
}
