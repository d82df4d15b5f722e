import { createHash } from 'node:crypto';
import type { Pool } from 'pg';
import { RateLimiterMemory, RateLimiterPostgres, RateLimiterRes, type RateLimiterAbstract } from 'rate-limiter-flexible';
import { networkOf } from './network-of.js';

export class TooManyTriesError extends Error {
  readonly retryAfterSeconds: number;

  constructor(retryAfterSeconds: number) {
    super('Too many tries from this address.');
    this.name = 'TooManyTriesError';
    this.retryAfterSeconds = retryAfterSeconds;
  }
}

const MINUTES = 60;
/** Our own numbers (no source): a person with a forgotten password is not locked out for long, a guessing machine gets nowhere. */
export const LIMITS = {
  signIn: { points: 10, duration: 15 * MINUTES },
  signInAddress: { points: 100, duration: 15 * MINUTES },
  link: { points: 60, duration: 15 * MINUTES },
  wrongKey: { points: 60, duration: 15 * MINUTES },
  key: { points: 600, duration: MINUTES },
  message: { points: 600, duration: 15 * MINUTES },
} as const;

/**
 * The table is made by the migrations: key varchar(255) primary key, points integer not null default 0, expire bigint.
 * Without a pool the counts are kept in this process alone.
 */
export interface LimitsOptions {
  pool?: Pool;
  table?: string;
}

export class Limits {
  readonly #signIn: RateLimiterAbstract;
  readonly #signInAddress: RateLimiterAbstract;
  readonly #link: RateLimiterAbstract;
  readonly #wrongKey: RateLimiterAbstract;
  readonly #key: RateLimiterAbstract;
  readonly #message: RateLimiterAbstract;

  constructor(options: LimitsOptions = {}) {
    const limiter = (name: keyof typeof LIMITS): RateLimiterAbstract => {
      const rule = { keyPrefix: name, ...LIMITS[name] };
      if (!options.pool) return new RateLimiterMemory(rule);
      return new RateLimiterPostgres({ ...rule, storeClient: options.pool, storeType: 'pool', tableName: options.table ?? 'rate_limits', tableCreated: true });
    };
    this.#signIn = limiter('signIn');
    this.#signInAddress = limiter('signInAddress');
    this.#link = limiter('link');
    this.#wrongKey = limiter('wrongKey');
    this.#key = limiter('key');
    this.#message = limiter('message');
  }

  /** Before a password is looked at. Throws TooManyTriesError. */
  async trySignIn(address: string, name: string): Promise<void> {
    await consume(this.#signInAddress, keyOf(address));
    await consume(this.#signIn, keyOf(address, name));
  }

  /** A right password forgives the wrong ones before it. */
  async signedIn(address: string, name: string): Promise<void> {
    await this.#signIn.delete(keyOf(address, name));
  }

  /** Before the token of a link is looked up. Throws TooManyTriesError. */
  tryLink(address: string): Promise<void> {
    return consume(this.#link, keyOf(address));
  }

  /** After a key that opens nothing. Throws TooManyTriesError. */
  wrongKey(address: string): Promise<void> {
    return consume(this.#wrongKey, keyOf(address));
  }

  /** Another program asks by its key, from wherever it runs. Throws TooManyTriesError. */
  useKey(id: string): Promise<void> {
    return consume(this.#key, keyOf('', id));
  }

  /** Before the signature of a message is looked at. Throws TooManyTriesError. */
  tryMessage(address: string): Promise<void> {
    return consume(this.#message, keyOf(address));
  }
}

async function consume(limiter: RateLimiterAbstract, key: string): Promise<void> {
  try {
    await limiter.consume(key);
  } catch (refused) {
    if (refused instanceof RateLimiterRes) throw new TooManyTriesError(Math.max(1, Math.ceil(refused.msBeforeNext / 1000)));
    throw refused;
  }
}

/** A hash, so that the table tells nobody who tried to sign in from where. */
function keyOf(address: string, name = ''): string {
  return createHash('sha256').update(`${networkOf(address)}\n${name.trim().toLowerCase()}`).digest('base64url');
}
