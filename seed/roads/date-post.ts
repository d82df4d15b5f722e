import type { Road } from './road.js';

/** Rows are written now and were written then: what an order has said so far gets the road's own time. */
export async function datePost({ driver, clock, order, dated }: Road): Promise<void> {
  const rows = await driver.db.system('filling in the demo', (tx) => tx.$queryRaw<{ id: string }[]>`
    UPDATE message SET created_at = ${clock.now()} WHERE order_id = ${order}::uuid AND NOT (id = ANY(${dated}::uuid[])) RETURNING id`);
  dated.push(...rows.map((r) => r.id));
}
