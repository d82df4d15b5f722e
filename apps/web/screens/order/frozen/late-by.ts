const units: [ms: number, one: string, many: string][] = [[86_400_000, 'day', 'days'], [3_600_000, 'hour', 'hours'], [60_000, 'minute', 'minutes']];

/** "4 hours 10 minutes": from when it happened to when it was written down, in the two largest units. */
export function lateBy(at: string, rec: string): string {
  let rest = Math.max(0, Date.parse(rec) - Date.parse(at));
  const parts: string[] = [];
  for (const [ms, one, many] of units) {
    const n = Math.floor(rest / ms);
    rest -= n * ms;
    if (n > 0 && parts.length < 2) parts.push(`${n} ${n === 1 ? one : many}`);
    else if (parts.length > 0) break;
  }
  return parts.join(' ') || 'less than a minute';
}
