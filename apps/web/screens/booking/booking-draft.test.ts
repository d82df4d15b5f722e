import type { BookingOptions } from '#libs/contracts/booking';
import { bookingOf, emptyDraft, missingIn, withUsualPeople, type Draft } from './booking-draft.js';

const slot = { day: '2026-11-26', start: '09:15', minutes: 45, room: { id: 'r', name: 'Room 1' }, operator: { id: 'o', name: 'Sef' }, nurse: { id: 'n', name: 'Lio' }, vet: { id: 'v', name: 'Ruan' } };
const options: BookingOptions = {
  day: '2026-11-25',
  studies: [{ protocol: 'elbow', version: '1', name: 'Elbows', views: 2, centres: [{ id: 'c', name: 'Centre' }], problems: [{ code: 'TOO_YOUNG', words: 'Too young. Earliest day 24 April 2027.', earliestDate: '2027-04-24' }], says: '' }],
  slots: [slot],
  estimate: { lines: [], total: { amountMinor: 32864, currency: 'MRK' } },
  questions: [{ question: 'ill', words: 'Ill?' }],
  advice: [],
  people: [
    { id: 'p1', name: 'Ilse', roles: ['owner'], email: 'ilse@longreach.example' },
    { id: 'p2', name: 'Bent', roles: ['payer', 'addressee'], email: null },
  ],
  repeats: [],
};
const full: Draft = { ...emptyDraft, studies: [{ protocol: 'hipLaxity', version: '1', centre: 'c' }], slot, answers: { ill: 'unknown' }, payer: 'p1', addressees: [{ person: 'p1', channel: 'mail' }] };

describe('a booking being talked through', () => {
  it('asks for the dog before anything else', () => {
    expect(missingIn(emptyDraft, undefined, undefined).map((m) => m.path)).toEqual(['dog']);
  });

  it('names every missing answer in the order of the form', () => {
    expect(missingIn(emptyDraft, 'd', options).map((m) => m.path)).toEqual(['studies', 'slot', 'ill', 'payer', 'addressees']);
  });

  it('is complete with “don’t know”, and without an accepted estimate', () => {
    expect(missingIn(full, 'd', options)).toEqual([]);
    expect(bookingOf(full, 'k', 'd', options)).not.toHaveProperty('estimateAccepted');
    expect(bookingOf({ ...full, accepted: { by: 'p1', how: 'phone' } }, 'k', 'd', options)).toMatchObject({ estimateAccepted: { by: 'p1', how: 'phone' }, estimateTotalMinor: 32864 });
  });

  it('says why a chosen study is not possible', () => {
    const tooYoung = { ...full, studies: [{ protocol: 'elbow', version: '1', centre: 'c' }] };
    expect(missingIn(tooYoung, 'd', options)).toEqual([expect.objectContaining({ part: 'studies', says: 'Too young. Earliest day 24 April 2027.' })]);
  });

  it('starts with the people who usually pay and get the result, by post where there is no mail address', () => {
    expect(withUsualPeople(emptyDraft, options.people)).toMatchObject({ payer: 'p2', addressees: [{ person: 'p2', channel: 'post' }] });
  });
});
