import { createHash, randomBytes } from 'node:crypto';

export interface NewToken {
  /** Goes into the cookie or the link and is not kept. */
  token: string;
  /** What is stored: who reads the database cannot use it. */
  hash: string;
}

export function newToken(): NewToken {
  const token = randomBytes(32).toString('base64url');
  return { token, hash: hashOf(token) };
}

/** Undefined when this cannot be one of our tokens, so that no query is made for it. */
export function tokenHash(token: string): string | undefined {
  return /^[A-Za-z0-9_-]{43}$/.test(token) ? hashOf(token) : undefined;
}

/** 256 random bits need no slow hash: they cannot be guessed. */
const hashOf = (token: string) => createHash('sha256').update(token).digest('hex');
