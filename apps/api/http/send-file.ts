import type { FastifyReply } from 'fastify';
import type { FileStore } from '#libs/platform/files/file-store';

/** A stored file for one person: never kept by a proxy, never run as a page. */
export async function sendStored(reply: FastifyReply, files: FileStore, sha256: string, type: string, name?: string): Promise<FastifyReply> {
  return privately(reply, type, name).send(await files.read(sha256));
}

export function privately(reply: FastifyReply, type: string, name?: string): FastifyReply {
  return reply
    .header('content-type', type)
    .header('cache-control', 'private, max-age=300')
    .header('x-content-type-options', 'nosniff')
    .header('content-security-policy', "default-src 'none'; style-src 'unsafe-inline'; sandbox")
    .header('content-disposition', name ? `inline; filename="${name.replace(/[^\w. -]/g, '_')}"; filename*=UTF-8''${encoded(name)}` : 'inline');
}

/** For names with letters beyond ASCII (RFC 8187). */
const encoded = (name: string): string => encodeURIComponent(name).replace(/['()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`);

/** A film's pixels, zipped once here; the browser unzips them by itself. */
export const sendPixels = (reply: FastifyReply, zipped: Buffer): FastifyReply => privately(reply, 'application/octet-stream').header('content-encoding', 'gzip').send(zipped);

export const imageType = (kind: string): string => ({ png: 'image/png', jpeg: 'image/jpeg' })[kind] ?? 'application/dicom';

/** A list for a spreadsheet. */
export const sendCsv = (reply: FastifyReply, name: string, text: string): FastifyReply => privately(reply, 'text/csv; charset=utf-8').header('content-disposition', `attachment; filename="${name}"`).send(text);
