import { AddressRefusedError, type Refusal } from './address-refused-error.js';

/** What a line broke on; `detail` is the network's own word for it. */
export interface LineFault { fault: Refusal | 'certificate' | 'nobodyListens' | 'noAnswer' | 'broken'; detail: string | null }

const NAMES = new Set(['ENOTFOUND', 'EAI_AGAIN', 'EAI_NODATA']);
const SILENT = new Set(['ETIMEDOUT', 'EHOSTUNREACH', 'ENETUNREACH', 'UND_ERR_CONNECT_TIMEOUT', 'UND_ERR_HEADERS_TIMEOUT', 'UND_ERR_BODY_TIMEOUT']);
// OpenSSL's names for a certificate that is not believed, as Node hands them on
const CERTIFICATE = /^(CERT_|DEPTH_ZERO_|SELF_SIGNED_|UNABLE_TO_|ERR_TLS_CERT_|INVALID_CA$|HOSTNAME_MISMATCH$)/;

/** Reads it off the error that `Outgoing.fetch` throws, wherever the client has put it. */
export function lineFault(error: unknown): LineFault {
  if (error instanceof AddressRefusedError) return { fault: error.why, detail: null };
  const inner = chain(error);
  const code = inner.map(({ code: one }) => one).find((one) => typeof one === 'string') ?? null;
  if (inner.some(({ name }) => name === 'TimeoutError' || name === 'AbortError') || (code && SILENT.has(code))) return { fault: 'noAnswer', detail: code };
  if (code && NAMES.has(code)) return { fault: 'nameNotFound', detail: code };
  if (code && CERTIFICATE.test(code)) return { fault: 'certificate', detail: code };
  if (code === 'ECONNREFUSED') return { fault: 'nobodyListens', detail: code };
  return { fault: 'broken', detail: code ?? inner.at(-1)?.message ?? null };
}

interface Link { name?: string; message?: string; code?: string; cause?: unknown; errors?: unknown[] }

/** What the client wraps in errors of its own; several where it tried several addresses. */
function chain(error: unknown): Link[] {
  if (typeof error !== 'object' || error === null) return [];
  const link = error as Link;
  return [link, ...(link.errors ?? [link.cause]).flatMap(chain)];
}
