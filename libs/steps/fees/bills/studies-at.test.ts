import { studiesAt } from './studies-at.js';

const centres = new Map([['c1', { name: 'First readers', feeMinor: 5800 }], ['c2', { name: 'Other readers', feeMinor: 4900 }]]);
const row = { study: 's', order: 'o', accession: 'WS26-00001-A', dog: 'Gale', protocol: 'elbow', version: '1', asked: 'c1', sends: [], read: [] };
const send = (centre: string, day: number, number = 'P-1') => ({ centre, number, at: `2026-11-0${day}T10:00:00.000Z` });

it('a study that was sent nowhere is at the centre that was asked for', () => {
  expect(studiesAt(row, centres, 'UTC')).toEqual([expect.objectContaining({ centre: 'c1', sentOn: null, readOn: null, packages: [], feeMinor: 5800 })]);
});

it('a study that went to a second centre is billed by each, and was read by the one that had it when the reading came', () => {
  const [first, second] = studiesAt({ ...row, sends: [send('c1', 2), send('c2', 4), send('c2', 5, 'P-2')], read: ['2026-11-06T10:00:00.000Z'] }, centres, 'UTC');
  expect(first).toMatchObject({ centre: 'c1', sentOn: '2026-11-02', readOn: null, packages: ['P-1'] });
  expect(second).toMatchObject({ centre: 'c2', sentOn: '2026-11-04', readOn: '2026-11-06', packages: ['P-1', 'P-2'], feeMinor: 4900 });
});

it('days are those of the practice', () => {
  expect(studiesAt({ ...row, sends: [{ centre: 'c1', number: 'P-1', at: '2026-11-02T23:30:00.000Z' }] }, centres, 'Europe/Vienna')[0]).toMatchObject({ sentOn: '2026-11-03' });
});
