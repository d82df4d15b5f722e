import { ownerConsents, type OwnerPage } from '#libs/contracts/screens/owner';
import type { ScreenSentence } from '#libs/words/de/screen';
import { translator } from '#libs/words/translator';
import { blankSheet, readSheet, type ConsentSheet } from './consent-sheet.js';

const id = (n: number) => `00000000-0000-4000-8000-00000000000${n}`;
const t = translator<ScreenSentence>('en', {});
const open = { answered: null, text: 'Text', version: '1', language: 'en' as const };
const page: OwnerPage = {
  order: id(1),
  language: 'en',
  accession: 'A1',
  version: 3,
  dog: { name: 'Sedge', breed: 'Sornish Setter', sex: 'female', transponder: '999 000 001 402 551' },
  practice: { name: 'Weirside', address: '3 Lock Lane', phone: '0470 21 00', zone: 'Europe/Vienna' },
  status: '',
  knots: [],
  toDo: [],
  waiting: [],
  visit: { id: id(2), day: '2026-11-26', start: '10:30', advice: null },
  estimate: { lines: [], totalMinor: 33_000, currency: 'EUR', accepted: true },
  questions: [],
  consents: { sedation: { ...open, title: 'The sleep' }, studies: [{ ...open, study: id(3), name: 'Hips', centre: 'Threnfold' }, { ...open, study: id(4), name: 'Elbows', centre: 'Threnfold' }], sendAll: open, statistics: open },
  transfer: null,
  letters: { anyTime: false, reachable: null },
  results: [],
  documents: [],
  signer: { person: id(5), name: 'Hanne Birk', role: 'owner' },
};
const signed: ConsentSheet = { ...blankSheet, signature: { typedName: ' Hanne Birk ' } };
const wishes = { resuscitate: 'no', limit: '500', number: '0470 99 12', collectors: 'Hanne Birk\n\n Lio Sand ' } as const;

describe('the consent sheet', () => {
  it('keeps a yes here and a no there apart, under one signature', () => {
    const { request } = readSheet({ ...signed, ...wishes, choices: { sedation: 'yes', [id(3)]: 'yes', sendAll: 'no', statistics: 'no' } }, page, t);
    expect(ownerConsents.parse(request)).toEqual({
      visit: id(2),
      sedation: { answer: 'yes', emergency: { resuscitate: 'no', limitMinor: 50_000, number: '0470 99 12', collectors: ['Hanne Birk', 'Lio Sand'] } },
      studies: [{ study: id(3), answer: 'yes' }],
      sendAll: 'no',
      statistics: 'no',
      typedName: 'Hanne Birk',
    });
  });

  it('asks every emergency wish before a yes to the sleep, and none before a no', () => {
    const { problems } = readSheet({ ...signed, choices: { sedation: 'yes' } }, page, t);
    expect(Object.keys(problems ?? {}).sort()).toEqual(['collectors', 'limit', 'number', 'resuscitate']);
    expect(readSheet({ ...signed, choices: { sedation: 'no' } }, page, t).request?.sedation).toEqual({ answer: 'no' });
  });

  it('sends nothing while nothing is decided or nobody has signed', () => {
    expect(readSheet(signed, page, t).problems).toHaveProperty('choices');
    expect(readSheet({ ...blankSheet, choices: { sendAll: 'yes' } }, page, t).problems).toHaveProperty('signature');
    expect(readSheet({ ...blankSheet, signature: { typedName: '  ' }, choices: { sendAll: 'yes' } }, page, t).problems).toHaveProperty('signature');
  });

  it('signs a drawn signature with the name of the person the link was sent to', () => {
    const { request } = readSheet({ signature: { signatureSvg: '<svg/>' }, choices: { sendAll: 'yes' } }, page, t);
    expect(request).toMatchObject({ signatureSvg: '<svg/>', typedName: 'Hanne Birk' });
  });
});
