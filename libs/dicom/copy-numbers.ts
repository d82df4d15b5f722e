import { createHmac } from 'node:crypto';
import { uidOf, uuidFrom } from './uids.js';

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
