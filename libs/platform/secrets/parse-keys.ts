import { KEY_BYTES } from './secret-box.js';

/** One key or several, with spaces, commas or lines between; undefined for what is none. The first seals. */
export function parseKeys(text: string): Buffer[] | undefined {
  const words = text.split(/[\s,]+/).filter((word) => word !== '');
  const keys = words.map((word) => (/^[A-Za-z0-9+/_-]{43}=?$/.test(word) ? Buffer.from(word, 'base64') : Buffer.alloc(0)));
  return keys.length > 0 && keys.every((key) => key.length === KEY_BYTES) ? keys : undefined;
}
