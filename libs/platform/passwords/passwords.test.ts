import { parseOptions } from '@node-rs/argon2';
import { hashPassword, matchNobody, passwordMatches } from './password.js';
import { newToken, tokenHash } from './token.js';

describe('a password', () => {
  it('is known again, and no other is', async () => {
    const stored = await hashPassword('river otter 7');
    expect(await passwordMatches('river otter 7', stored)).toBe(true);
    expect(await passwordMatches('river otter 8', stored)).toBe(false);
  });

  it('is stored with a salt of its own', async () => {
    expect(await hashPassword('same')).not.toBe(await hashPassword('same'));
  });

  // OWASP Password Storage Cheat Sheet, section Argon2id: m = 19456 (19 MiB), t = 2, p = 1
  it('is hashed with the recommended effort', async () => {
    const stored = await hashPassword('x');
    expect(stored).toMatch(/^\$argon2id\$v=19\$/);
    expect(parseOptions(stored)).toMatchObject({ memoryCost: 19_456, timeCost: 2, parallelism: 1 });
  });

  it('is the same in whatever code the keyboard sends its letters', async () => {
    expect(await passwordMatches('cafe\u0301', await hashPassword('caf\u00e9'))).toBe(true);
  });

  it('of absurd length is refused before any work', async () => {
    await expect(hashPassword('x'.repeat(1025))).rejects.toThrow(RangeError);
    expect(await passwordMatches('x'.repeat(1025), await hashPassword('x'))).toBe(false);
  });

  it('never matches nobody', async () => {
    expect(await matchNobody('nobody signs in with this')).toBe(false);
  });
});

describe('a token', () => {
  it('is 32 random bytes of which only the hash is kept', () => {
    const { token, hash } = newToken();
    expect(Buffer.from(token, 'base64url')).toHaveLength(32);
    expect(tokenHash(token)).toBe(hash);
    expect(newToken().token).not.toBe(token);
  });

  it.each(['', 'short', 'x'.repeat(44), `${'x'.repeat(42)}=`, `${'x'.repeat(42)}\n`])('%j is none of ours', (token) => {
    expect(tokenHash(token)).toBeUndefined();
  });
});
