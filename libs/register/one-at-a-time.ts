import type { Tx } from '#libs/platform/database/db';

/** Two desks that enter the same thing at once: the second waits here until the first has written it, and then finds it. */
export async function oneAtATime(tx: Tx, practice: string, what: string): Promise<void> {
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${practice} ${what}`}, 0))`;
}
