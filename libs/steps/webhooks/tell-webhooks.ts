import type { Fact } from '#libs/pathway/facts';
import type { Work } from '../record/work.js';
import { eventOf } from './event-of.js';

/** In the transaction of the facts themselves: neither can be there without the other. */
export async function tellWebhooks({ tx, order, now }: Pick<Work, 'tx' | 'order' | 'now'>, facts: readonly Fact[]): Promise<void> {
  const events = facts.flatMap((fact) => {
    const event = eventOf(fact, order.facts);
    return event ? [{ id: fact.id, event }] : [];
  });
  if (events.length > 0) await tx.$executeRaw`SELECT app.tell_webhooks(${order.id}::uuid, ${JSON.stringify(events)}::jsonb, ${now}::timestamptz)`;
}
