import { createHash, createHmac } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

const hmac = (key: string | Buffer, text: string) => createHmac('sha256', key).update(text).digest();
// RFC 3986: what encodeURIComponent leaves and the signature does not
const encoded = (text: string) => encodeURIComponent(text).replace(/[!'()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`);

/** Whether an address was signed with this secret, for this method and these headers (AWS Signature Version 4, query parameters): the test's S3 server does not look. */
export function isSigned({ method, url, headers }: IncomingMessage, secret: string): boolean {
  const { pathname, searchParams } = new URL(url!, 'http://here');
  const said = (name: string) => searchParams.get(`X-Amz-${name}`) ?? '';
  const query = [...searchParams].filter(([name]) => name !== 'X-Amz-Signature').map(([name, value]) => `${encoded(name)}=${encoded(value)}`).sort().join('&');
  const names = said('SignedHeaders').split(';');
  const request = [method, pathname, query, ...names.map((name) => `${name}:${String(headers[name]).trim()}`), '', names.join(';'), 'UNSIGNED-PAYLOAD'].join('\n');
  const scope = said('Credential').split('/').slice(1);
  const key = scope.reduce<string | Buffer>((made, part) => hmac(made, part), `AWS4${secret}`);
  const text = ['AWS4-HMAC-SHA256', said('Date'), scope.join('/'), createHash('sha256').update(request).digest('hex')].join('\n');
  return hmac(key, text).toString('hex') === said('Signature');
}
