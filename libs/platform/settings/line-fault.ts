export const PATIENCE_MS = 5000;

/** What is wrong with the way to a server, in words; undefined when the error is about something else. */
export function lineFault(error: unknown, server: string, url: string): string | undefined {
  const { hostname, port } = new URL(url);
  const place = port ? `${hostname}, port ${port}` : hostname;
  const codes = new Set(codesOf(error));
  const has = (...wanted: string[]) => wanted.some((code) => codes.has(code));
  if (has('ENOTFOUND', 'EAI_AGAIN', 'EDNS')) return `the host ${hostname} is not known; check the spelling, or the network's name service.`;
  if (has('ECONNREFUSED')) return `no ${server} answers at ${place}; check host and port, and that it is started.`;
  if (has('ETIMEDOUT', 'ECONNRESET', 'EHOSTUNREACH', 'ENETUNREACH', 'ECONNECTION')) return `the ${server} at ${place} gave no answer; check host, port and firewall.`;
  return undefined;
}

/** Libraries wrap the error of the line in their own, or in a list of one for each address tried. */
function codesOf(error: unknown): string[] {
  if (typeof error !== 'object' || error === null) return [];
  const { code, originalCode, message, errors, cause } = error as { code?: string; originalCode?: string; message?: string; errors?: unknown[]; cause?: unknown };
  const named = message?.match(/\bE[A-Z_]{4,}\b/g) ?? []; // some libraries keep the code in their sentence only
  const own = [code, originalCode, ...named, /timeout|timed out/i.test(message ?? '') ? 'ETIMEDOUT' : undefined].filter((c) => c !== undefined);
  return [...own, ...(errors ?? []).flatMap(codesOf), ...codesOf(cause)];
}
