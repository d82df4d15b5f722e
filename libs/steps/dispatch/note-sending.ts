import { inPlainEnglish, type Tellable } from '#libs/words/said-error';
import { queueActor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import { workOn, type Stated, type Work } from '../record/work.js';
import type { StepDeps } from '../record/step-deps.js';
import { closeDelivery, type Delivery, type DeliveryState } from './delivery.js';

type Outcome = 'handedOver' | 'failed';

/** What became of a sending, as a fact of its order; said once as long as it stays the same. `closes` ends the sending with it. */
export async function noteSending(deps: StepDeps, delivery: Delivery, outcome: Outcome | undefined, told: Tellable[], closes?: DeliveryState): Promise<void> {
  const { send } = delivery;
  await deps.db.system('note an outcome', async (tx) => {
    const now = deps.clock.now();
    const order = await lockOrder(tx, delivery.order);
    if (closes && (await closeDelivery(tx, send, now, closes, outcome === 'failed' ? told : null)) === 0) return;
    if (!order || !outcome) return;
    const work = workOn(tx, now, queueActor(order.practice), order, deps.publicUrl);
    const stated = delivery.note ? ofNote(work, delivery, closes ?? 'stopped', told) : ofFilms(work, delivery, outcome, told);
    if (stated) await append(work, [stated], { action: 'noteOutcome' });
  });
}

function ofFilms(work: Work, { send, study }: Delivery, outcome: Outcome, told: Tellable[]): Stated | undefined {
  const said = work.facts('sendOutcome').filter((f) => f.send === send).at(-1);
  return said?.outcome === outcome ? undefined : { type: 'sendOutcome', study, send, outcome, detail: detailOf(told) };
}

/** A note that came through without trouble is nobody's business; once it did not, what becomes of it is told. */
function ofNote(work: Work, { send: note, study }: Delivery, state: DeliveryState, told: Tellable[]): Stated | undefined {
  const outcome = state === 'arrived' ? 'arrived' : state === 'refused' ? 'refused' : 'failed';
  const said = work.facts('noteOutcome').filter((f) => f.note === note).at(-1);
  if (said?.outcome === outcome || (!said && outcome === 'arrived')) return undefined;
  return { type: 'noteOutcome', study, note, outcome, detail: detailOf(told) };
}

const detailOf = (told: Tellable[]) => ({ words: told.map(inPlainEnglish).join(' '), sentences: told });
