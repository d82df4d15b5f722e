import { createCipheriv, createDecipheriv, createHash, randomBytes } from 'node:crypto';
import { SecretLostError } from './secret-lost-error.js';

const CIPHER = 'aes-256-gcm';
export const KEY_BYTES = 32;
const NONCE_BYTES = 12;
const TAG_BYTES = 16;
/** A stored secret reads `sealed.v1.KEY.BYTES`: by which key it was sealed, then nonce, tag and text in base64url. */
export const SEALED = 'sealed.v1.';

/**
 * Seals what the program must read again, so that who has the database or a backup of it, and not the key, cannot. What a secret is about is bound into
 * it: moved to another row, or to another address, it does not open. The first key seals; the others still open what was sealed before.
 */
export class SecretBox {
  readonly #keys: ReadonlyMap<string, Buffer>;
  /** Of the key that seals. */
  readonly keyId: string;

  constructor(keys: readonly Buffer[]) {
    if (keys.length === 0 || keys.some((key) => key.length !== KEY_BYTES)) throw new RangeError(`A key has ${KEY_BYTES} bytes, and there is at least one.`);
    this.#keys = new Map(keys.map((key) => [idOf(key), key]));
    this.keyId = idOf(keys[0]!);
  }

  seal(secret: string, about: string): string {
    const head = `${SEALED}${this.keyId}.`;
    const nonce = randomBytes(NONCE_BYTES);
    const cipher = createCipheriv(CIPHER, this.#keys.get(this.keyId)!, nonce).setAAD(Buffer.from(head + about));
    const text = Buffer.concat([cipher.update(secret, 'utf8'), cipher.final()]);
    return head + Buffer.concat([nonce, cipher.getAuthTag(), text]).toString('base64url');
  }

  /** What stands there from before secrets were sealed is answered as it stands; the worker seals it at its start. */
  open(stored: string, about: string): string {
    if (!stored.startsWith(SEALED)) return stored;
    const [keyId = '', bytes = ''] = stored.slice(SEALED.length).split('.');
    const key = this.#keys.get(keyId);
    if (!key) throw new SecretLostError(keyId);
    const content = Buffer.from(bytes, 'base64url');
    const [nonce, tag, text] = [content.subarray(0, NONCE_BYTES), content.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES), content.subarray(NONCE_BYTES + TAG_BYTES)];
    try {
      const decipher = createDecipheriv(CIPHER, key, nonce, { authTagLength: TAG_BYTES }).setAAD(Buffer.from(`${SEALED}${keyId}.${about}`)).setAuthTag(tag);
      return Buffer.concat([decipher.update(text), decipher.final()]).toString('utf8');
    } catch (error) {
      throw new SecretLostError(keyId, { cause: error });
    }
  }

  /** Whether what was sealed with this key can be read here; null is what was not sealed. */
  knows(keyId: string | null): boolean {
    return keyId === null || this.#keys.has(keyId);
  }
}

/** Tells keys apart and nothing of them. */
const idOf = (key: Buffer): string => createHash('sha256').update('cotyla: which key').update(key).digest('hex').slice(0, 8);
