/** Class 53, code 100 of PostgreSQL's error codes: disk_full. The client library wraps it, and says it in its details. */
export function isDatabaseFull(error: unknown): boolean {
  const { code, meta } = (error ?? {}) as { code?: unknown; meta?: unknown };
  return code === '53100' || JSON.stringify(meta ?? '').includes('"53100"');
}
