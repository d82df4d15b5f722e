import { createHmac } from 'node:crypto';
import { newSecret, sign, verify } from './signature.js';

const secret = 'Jefe';
const body = Buffer.from('what do ya want for nothing?');
const now = new Date('2026-11-30T10:00:00Z');
const time = String(now.getTime() / 1000);
const verdict = (more: object) => verify({ secret, time, key: 'k', signature: `v1=${sign(secret, time, 'k', body)}`, body, now, ...more });

describe('the signature of a message', () => {
  it('is an HMAC-SHA-256 of second, key and body', () => {
    // RFC 4231, test case 2, holds the function that is used.
    expect(createHmac('sha256', secret).update(body).digest('hex')).toBe('5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843');
    expect(sign(secret, time, 'k', body)).toBe(createHmac('sha256', secret).update(`${time}.k.${body.toString()}`).digest('hex'));
  });

  it('is taken for five minutes before and after its second', () => {
    for (const [seconds, says] of [[0, 'right'], [300, 'right'], [-300, 'right'], [301, 'time'], [-301, 'time']] as const) expect([seconds, verdict({ now: new Date(now.getTime() + seconds * 1000) })]).toEqual([seconds, says]);
  });

  it.each([{ secret: 'Jefe2' }, { key: 'l' }, { time: String(Number(time) + 1) }, { body: Buffer.from('x') }, { signature: `v1=${'0'.repeat(64)}` }])('does not fit with %j', (more) => {
    expect(verdict(more)).toBe('signature');
  });

  it.each([{ signature: '' }, { signature: 'v1=ab' }, { signature: `v1=${'G'.repeat(64)}` }, { signature: `v1=${'a'.repeat(65)}` }, { time: '' }, { time: '-1' }, { time: '1e9' }, { time: '9'.repeat(13) }])('is none with %j', (more) => {
    expect(verdict(more)).toBe('form');
  });

  it('is made with secrets of 256 bits that differ', () => {
    const all = new Set(Array.from({ length: 20 }, newSecret));
    expect(all.size).toBe(20);
    for (const one of all) expect(Buffer.from(one, 'base64url')).toHaveLength(32);
  });
});
