import { readFileSync } from 'node:fs';
import { signature } from './sign.js';
import { eventOf } from './event-of.js';
import type { Fact } from '#libs/pathway/facts';

const documented = readFileSync(new URL('../../../docs/integrations.md', import.meta.url), 'utf8');
const body = '{"id":"1","event":"dog.died","order":"WS26-1","at":"2026-11-26T08:30:00.000Z"}';
const secret = 'c2VjcmV0LW9mLXRoZS1leGFtcGxl';

describe('a call is signed', () => {
  it('as the example of the documentation says', () => {
    expect(documented).toContain(secret);
    expect(documented).toContain(body);
    expect(documented).toContain(signature([secret], 1764145800, body));
  });

  it('so that the documented check takes it, and takes nothing that was changed', async () => {
    const code = /```js\n([\s\S]+?)```/.exec(documented)![1]!.replace(/^import .*$/m, '').replace('export function comesFromCotyla', 'return function');
    const { createHmac, timingSafeEqual } = await import('node:crypto');
    const check = new Function('createHmac', 'timingSafeEqual', code)(createHmac, timingSafeEqual) as (headers: object, body: string, secret: string, now: number) => boolean;
    const headers = (secrets: string[]) => ({ 'webhook-timestamp': '1764145800', 'webhook-signature': signature(secrets, 1764145800, body) });
    expect(check(headers([secret]), body, secret, 1764145810)).toBe(true);
    expect(check(headers(['new', secret]), body, secret, 1764145810)).toBe(true);
    expect(check(headers(['new']), body, secret, 1764145810)).toBe(false);
    expect(check(headers([secret]), body.replace('WS26-1', 'WS26-2'), secret, 1764145810)).toBe(false);
    expect(check(headers([secret]), body, secret, 1764145800 + 301)).toBe(false);
  });
});

it('a second acceptance of one study is an amendment, that of another study is not', () => {
  const accepted = (study: string) => ({ type: 'resultAccepted', study, result: 'r' }) as unknown as Fact;
  expect(eventOf(accepted('s1'), [])).toBe('result.accepted');
  expect(eventOf(accepted('s1'), [accepted('s2')])).toBe('result.accepted');
  expect(eventOf(accepted('s1'), [accepted('s1')])).toBe('result.amended');
  expect(eventOf({ type: 'drugRecorded' } as unknown as Fact, [])).toBeUndefined();
});
