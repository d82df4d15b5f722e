import type { Tx } from '#libs/platform/database/db';
import { births } from './births.js';

/** As the scheme's lead would write it down, on the day on which the sets were frozen. */
export async function sayInventedBirths(tx: Tx, year: number, at: Date): Promise<void> {
  const lead = await tx.staff.findFirstOrThrow({ where: { roles: { has: 'lead' } }, select: { id: true } });
  for (const { breed, yearsAgo, born, source } of births) await tx.$executeRaw`SELECT app.say_births(${lead.id}::uuid, ${breed}, ${year - yearsAgo}::int, ${born}::int, ${source}, ${at})`;
}
