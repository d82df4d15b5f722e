import type { BookingOptions, NewBooking, Slot } from '#libs/contracts/booking';
import type { Answer, Question } from '#libs/contracts/common';
import { t } from '../../words/t.js';

type Channel = NewBooking['addressees'][number]['channel'];

/** A booking while it is being talked through on the phone. */
export type Draft = {
  /** Chosen protocols, each with its centre. */
  studies: { protocol: string; version: string; centre: string }[];
  from: string | undefined;
  slot: Slot | undefined;
  answers: Partial<Record<Question, Answer>>;
  notes: Partial<Record<Question, string>>;
  payer: string | undefined;
  addressees: { person: string; channel: Channel }[];
  accepted: { by: string | undefined; how: 'phone' | 'paper' | 'link' | undefined };
  advice: string | undefined;
};

export const emptyDraft: Draft = { studies: [], from: undefined, slot: undefined, answers: {}, notes: {}, payer: undefined, addressees: [], accepted: { by: undefined, how: undefined }, advice: undefined };

/** Who usually pays and gets the result, until somebody says otherwise. */
export function withUsualPeople(draft: Draft, people: BookingOptions['people']): Draft {
  const owner = people.find((p) => p.roles.includes('owner')) ?? people[0];
  const payer = people.find((p) => p.roles.includes('payer')) ?? owner;
  const addressees = people.filter((p) => p.roles.includes('addressee'));
  const get = addressees.length > 0 ? addressees : owner ? [owner] : [];
  return {
    ...draft,
    payer: draft.payer ?? payer?.id,
    addressees: draft.addressees.length > 0 ? draft.addressees : get.map((p) => ({ person: p.id, channel: p.email ? 'mail' : 'post' })),
    accepted: { ...draft.accepted, by: draft.accepted.by ?? payer?.id },
  };
}

export type Part = 'dog' | 'studies' | 'slot' | 'questions' | 'people' | 'estimate';
export type Missing = { part: Part; path: string; words: string; says: string };

/** What is still missing, in the order of the form. Not having accepted the estimate only makes a hold. */
export function missingIn(draft: Draft, dog: string | undefined, options: BookingOptions | undefined): Missing[] {
  if (!dog) return [{ part: 'dog', path: 'dog', words: t('which dog'), says: t('Find the dog, or enter a new one.') }];
  const missing: Missing[] = [];
  if (draft.studies.length === 0) missing.push({ part: 'studies', path: 'studies', words: t('a study'), says: t('Choose at least one study.') });
  for (const chosen of draft.studies) {
    const problem = options?.studies.find((s) => s.protocol === chosen.protocol && s.version === chosen.version)?.problems[0];
    if (problem) missing.push({ part: 'studies', path: 'studies', words: t('a study that can be done'), says: problem.words });
  }
  if (!draft.slot) missing.push({ part: 'slot', path: 'slot', words: t('day and time'), says: t('Choose a time.') });
  for (const { question } of options?.questions ?? []) if (!draft.answers[question]) missing.push({ part: 'questions', path: question, words: t('an answer'), says: t('Yes, no or don’t know.') });
  if (!draft.payer) missing.push({ part: 'people', path: 'payer', words: t('who pays'), says: t('Say who pays.') });
  if (draft.addressees.length === 0) missing.push({ part: 'people', path: 'addressees', words: t('who gets the result'), says: t('Name who gets the result.') });
  return missing;
}

export function bookingOf(draft: Draft, key: string, dog: string, options: BookingOptions): NewBooking | null {
  const { slot, payer, accepted } = draft;
  if (!slot || !payer) return null;
  return {
    key,
    dog,
    studies: draft.studies,
    slot: { day: slot.day, start: slot.start, minutes: slot.minutes, room: slot.room.id, operator: slot.operator.id, nurse: slot.nurse.id, vet: slot.vet.id },
    answers: draft.answers,
    answerNotes: draft.notes,
    payer,
    addressees: draft.addressees,
    ...(accepted.by && accepted.how && { estimateAccepted: { by: accepted.by, how: accepted.how } }),
    estimateTotalMinor: options.estimate.total.amountMinor,
    ...(draft.advice && { advice: draft.advice }),
  };
}
