import type { OrderEvent } from '#libs/contracts/integrations';
import type { Fact, FactType } from '#libs/pathway/facts';

const EVENTS: Partial<Record<FactType, OrderEvent>> = {
  orderOpened: 'order.opened', orderCancelled: 'order.cancelled', visitBooked: 'visit.booked', visitCancelled: 'visit.cancelled', visitMissed: 'visit.cancelled', wentHome: 'visit.home',
  packageSent: 'films.sent', acknowledged: 'films.acknowledged', filmsRejected: 'films.rejected', resultAccepted: 'result.accepted', resultWithdrawn: 'result.withdrawn', letterReleased: 'letter.released', dogDied: 'dog.died',
};

/** What a fact is called outside; most are nobody else's business. */
export function eventOf(fact: Fact, before: readonly Fact[]): OrderEvent | undefined {
  if (fact.type === 'resultAccepted' && before.some((f) => f.type === 'resultAccepted' && f.study === fact.study)) return 'result.amended';
  return EVENTS[fact.type];
}
