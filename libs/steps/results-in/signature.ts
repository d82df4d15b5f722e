import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';

/** Our own choice, as long as clocks may differ and a message may be on its way. */
export const WINDOW_SECONDS = 5 * 60;

/** 256 random bits, to be typed or pasted once. */
export const newSecret = (): string => randomBytes(32).toString('base64url');

/** What is signed: the second, the message's own key and the body, so that none of the three is taken from another message. */
export function sign(secret: string, time: string, key: string, body: Uint8Array): string {
  return createHmac('sha256', secret).update(`${time}.${key}.`).update(body).digest('hex');
}

export type Verdict = 'right' | 'form' | 'time' | 'signature';

/** The signature is compared also when the time is wrong, in a time that does not tell how much of it is right. */
export function verify({ secret, time, key, signature, body, now }: { secret: string; time: string; key: string; signature: string; body: Uint8Array; now: Date }): Verdict {
  const given = /^v1=([0-9a-f]{64})$/.exec(signature)?.[1];
  if (!given || !/^\d{1,12}$/.test(time)) return 'form';
  const right = timingSafeEqual(Buffer.from(given, 'hex'), Buffer.from(sign(secret, time, key, body), 'hex'));
  if (!right) return 'signature';
  return Math.abs(now.getTime() / 1000 - Number(time)) <= WINDOW_SECONDS ? 'right' : 'time';
}
