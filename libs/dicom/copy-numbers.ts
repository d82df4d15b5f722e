import { createHmac } from 'node:crypto';
import { uidOf } from './uids.js';

/**
 * The UIDs of the copies that go out under one number: the same whenever they are made anew, so that a film that was sent already is known
 * by its UID; of another number, others; and without the key nobody comes from them to the film's own, nor from one number to another.
 */
export interface CopyNumbers {
  study: string;
  /** Of a film by what tells it from every other one, its content's hash: some machines give two films one UID, and some give none. */
  film(hash: string): string;
  /** Of anything else that has a UID in the film. */
  other(uid: string): string;
}

export function copyNumbers(key: string, number: string): CopyNumbers {
  const uid = (what: string) => uidOf(uuidFrom(createHmac('sha256', key).update(JSON.stringify([number, what])).digest()));
  return { study: uid('study'), film: (hash) => uid(`film ${hash}`), other: (of) => uid(`uid ${of}`) };
}

/** RFC 9562 section 5.8: a UUID whose bits are an application's own. */
function uuidFrom(bytes: Buffer): string {
  const own = Buffer.from(bytes.subarray(0, 16));
  own[6] = (own[6]! & 0x0f) | 0x80;
  own[8] = (own[8]! & 0x3f) | 0x80;
  return own.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
