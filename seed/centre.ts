import type { SeedStaff } from './practices.js';

export interface SeedCentre {
  key: CentreKey;
  name: string;
  place: string;
  mail: string;
  ackDays: number;
  resultDays: number;
  feeMinor: number;
  protocols: string[];
  readers: SeedStaff[];
}

export type CentreKey = 'threnfold' | 'sluiceGreen';

/** Invented deadlines and fees; no region of a real country, so the scheme’s own free days count. */
export const centres: SeedCentre[] = [
  {
    key: 'threnfold',
    name: 'Reading centre, Threnfold',
    place: 'Threnfold',
    mail: 'threnfold.example',
    ackDays: 3,
    resultDays: 10,
    feeMinor: 5_800,
    protocols: ['hipLaxity', 'hipLoaded', 'hipExtended', 'elbow'],
    readers: [
      { name: 'Noemi Haskel', mail: 'noemi', roles: ['reader'] },
      { name: 'Tobin Arkwell', mail: 'tobin', roles: ['reader'] },
    ],
  },
  {
    key: 'sluiceGreen',
    name: 'Film readers of Sluice Green',
    place: 'Sluice Green',
    mail: 'sluicegreen.example',
    ackDays: 4,
    resultDays: 12,
    feeMinor: 4_900,
    protocols: ['hipExtended', 'elbow'],
    readers: [{ name: 'Vera Castine', mail: 'vera', roles: ['reader'] }],
  },
];
