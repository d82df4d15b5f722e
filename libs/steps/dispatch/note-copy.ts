import { copyNumbers } from '#libs/dicom/copy-numbers';
import type { Copy } from '#libs/dicom/de-identify';
import { rejectionNote } from '#libs/dicom/rejection-note';
import { EXPLICIT } from '#libs/dicom/syntaxes';
import { withOffset } from '../record/local-time.js';
import type { Delivery } from './delivery.js';
import type { SentNote } from './withdraw-sent.js';

const KEY_OBJECTS = '1.2.840.10008.5.1.4.1.1.88.59';

/** The note as a file, with the clock of whoever sends it. */
export function noteCopy({ send, summary, zone }: Delivery, note: SentNote, key: string, now: Date): Omit<Copy, 'burnedIn'> {
  const numbers = copyNumbers(key, summary.number);
  const [sopInstanceUid, seriesUid] = [numbers.other(`note ${send}`), numbers.other(`series of note ${send}`)];
  const [day, time] = withOffset(now, zone).split('T') as [string, string];
  const { number, sex, neutered, breed } = summary.dog;
  const content = rejectionNote({
    ...note, words: [note.words, ...(note.reasons ?? [])].join(' '), number: summary.number, dog: { number, breed, neutered, sex: sex === 'male' ? 'male' : 'female' },
    sopInstanceUid, seriesUid, imagedOn: summary.imagedOn, day, time: time.slice(0, 8),
  });
  return { content: [content], sopClassUid: KEY_OBJECTS, sopInstanceUid, studyUid: note.studyUid, seriesUid, transferSyntax: EXPLICIT };
}
