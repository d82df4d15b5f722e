/**
 * A transaction did not get its turn or did not come to its end in time (Prisma's P2028), or waited too long for somebody
 * else's (PostgreSQL's 55P03, lock_not_available, which the client library wraps). It was rolled back.
 */
export function isTooBusy(error: unknown): boolean {
  const { code, meta } = (error ?? {}) as { code?: unknown; meta?: unknown };
  return code === 'P2028' || code === '55P03' || JSON.stringify(meta ?? '').includes('"55P03"');
}
