import type { Words } from '#libs/words/words';
import type { DogOnPaper, PracticeOnPaper } from '#libs/documents/snapshots';
import { localDay } from '#libs/pathway/zones';
import { withOffset } from '../record/local-time.js';
import type { Work } from '../record/work.js';

const isoDay = (d: Date): string => d.toISOString().slice(0, 10);

export const lines = (address: string): string[] => address.split(/\s*[\n,]\s*/).filter(Boolean);

/** The practice that the order belongs to, as its papers name it. */
export function practiceOnPaper({ order }: Work): PracticeOnPaper {
  const practice = order.practices[order.practice]!;
  return { name: practice.name, addressLines: lines(practice.address), phone: practice.phone };
}

export async function dogOnPaper({ tx, order }: Work): Promise<DogOnPaper> {
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog } });
  const name = await tx.dogName.findFirst({ where: { dogId: dog.id }, orderBy: { from: 'desc' } });
  const transponder = await tx.dogIdentifier.findFirst({ where: { dogId: dog.id, until: null, kind: 'transponder' }, orderBy: { from: 'desc' } });
  const book = await tx.studBookNumber.findFirst({ where: { dogId: dog.id } });
  return {
    callName: dog.callName,
    registeredName: name && name.name !== dog.callName ? name.name : null,
    breed: dog.breed,
    sex: dog.sex as 'male' | 'female',
    birth: { earliest: isoDay(dog.bornEarliest), latest: isoDay(dog.bornLatest) },
    transponder: transponder?.value ?? null,
    studBookNumber: book ? `${book.book} ${book.number}` : null,
  };
}

export const zoneOf = ({ order }: Work): string => order.rules.practices[order.practice]?.zone ?? 'UTC';
export const today = (work: Work): string => localDay(work.now.toISOString(), zoneOf(work));
export const moment = (work: Work, at: string | Date = work.now): string => withOffset(at, zoneOf(work));

/** How a practice is reached, as its policy says it. */
export function reach({ order }: Work, t: Words): { phone: string; hours: string; outOfHours: string } {
  const practice = order.practices[order.practice]!;
  const policy = practice.policy as { hoursWords?: string; outOfHours?: string };
  return { phone: practice.phone, hours: policy.hoursWords ?? t('on working days'), outOfHours: policy.outOfHours ?? t('At night and on free days the same number says who is on call.') };
}

/** The address without scheme, as it is printed. */
export const checkAddress = ({ publicUrl }: Work): string => `${publicUrl.replace(/^https?:\/\//, '')}/c`;
