import type { Work } from '../record/work.js';

export interface LastWeight { weightKg: number; at: Date }

/** What the dog weighed when it was last admitted, under whichever order this practice sees. */
export async function lastWeight({ tx, order }: Work): Promise<LastWeight | undefined> {
  const [last] = await tx.$queryRaw<LastWeight[]>`
    SELECT (f.body->>'weightKg')::float8 AS "weightKg", f.at FROM fact f JOIN orders o ON o.id = f.order_id
    WHERE o.dog_id = ${order.dog}::uuid AND f.type = 'admitted' ORDER BY f.at DESC LIMIT 1`;
  return last;
}
