import { createHmac } from 'node:crypto';

/** HMAC-SHA256 over the time of sending, a full stop and the body, as lowercase hex; one for each secret that is valid now. */
export function signature(secrets: string[], timestamp: number, body: string): string {
  return secrets.map((secret) => `v1=${createHmac('sha256', secret).update(`${timestamp}.${body}`).digest('hex')}`).join(' ');
}
