import type { Role } from '#libs/contracts/common';
import type { Prices } from '#libs/contracts/register';
import { country } from './country.js';

export interface SeedStaff { name: string; mail: string; roles: Role[] }

export interface SeedPractice {
  key: PracticeKey;
  name: string;
  place: string;
  address: string;
  phone: string;
  mail: string;
  letters: string;
  mayCertify: boolean;
  staff: SeedStaff[];
  xrayRooms: string[];
  /** Sizes of pixels are invented. */
  equipment: { name: string; kind: 'xray' | 'distractionDevice' | 'loadFrame' | 'monitor'; checkedMonthsAhead: number; pixelMm?: number }[];
  /** Which staff may take which protocol’s views. */
  accredited: { staff: string; protocols: string[] }[];
  prices: Prices;
  policy: Record<string, unknown>;
}

export type PracticeKey = 'weirside' | 'karsby' | 'sorn';

/** Invented prices, in cents of a mark. */
const prices: Prices = { currency: country.currency, taxPercent: 10, sedationMinor: 9_600, radiographMinor: 4_200, sendingMinor: 1_200 };

/** Nobody waits for the morning or for Monday in a demo, so no hours are quiet and no day is. */
const policy = {
  letters: { mode: 'each' },
  quiet: { from: 0, to: 0 },
  reachable: { weekdays: [1, 2, 3, 4, 5, 6, 7], closed: [] },
  hours: { from: '08:00', to: '17:00', days: [1, 2, 3, 4, 5], slotMinutes: 45 },
  hoursWords: 'Monday to Friday, 8 to 18',
  outOfHours: 'At night and on free days the same number finds the vet on call.',
  schemeName: country.scheme,
};

export const practices: SeedPractice[] = [
  {
    key: 'weirside',
    name: 'Weirside Animal Practice',
    place: 'Dellin',
    address: '3 Lock Lane, Dellin',
    phone: '0470 21 00',
    mail: 'weirside.example',
    letters: 'AR',
    mayCertify: true,
    staff: [
      { name: 'Marit Oskar', mail: 'marit', roles: ['desk'] },
      { name: 'Lio Sand', mail: 'lio', roles: ['nurse'] },
      { name: 'Brida Tann', mail: 'brida', roles: ['nurse'] },
      { name: 'Sef Adler', mail: 'sef', roles: ['radiographer'] },
      { name: 'Wilm Korda', mail: 'wilm', roles: ['radiographer'] },
      { name: 'Ruan Tiedt', mail: 'ruan', roles: ['vet'] },
      { name: 'Anneke Dorn', mail: 'anneke', roles: ['vet'] },
      { name: 'Hedda Lorne', mail: 'hedda', roles: ['manager'] },
    ],
    xrayRooms: ['Room 1', 'Room 2'],
    equipment: [
      { name: 'X-ray table 1', kind: 'xray', checkedMonthsAhead: 9, pixelMm: 0.14 },
      { name: 'X-ray table 2', kind: 'xray', checkedMonthsAhead: 4 },
      { name: 'Distraction device', kind: 'distractionDevice', checkedMonthsAhead: 7 },
      { name: 'Load frame', kind: 'loadFrame', checkedMonthsAhead: 5 },
      { name: 'Monitor, ward', kind: 'monitor', checkedMonthsAhead: 11 },
    ],
    accredited: [
      { staff: 'Sef Adler', protocols: ['hipLaxity', 'hipLoaded'] },
      { staff: 'Wilm Korda', protocols: ['hipLaxity', 'hipLoaded'] },
    ],
    prices,
    policy,
  },
  {
    key: 'karsby',
    name: 'Hillfoot Animal Clinic',
    place: 'Karsby',
    address: '18 Quarry Stair, Karsby',
    phone: '0472 10 40',
    mail: 'hillfoot.example',
    letters: 'KR',
    mayCertify: false,
    staff: [
      { name: 'Pell Vantry', mail: 'pell', roles: ['desk', 'manager'] },
      { name: 'Sanne Umber', mail: 'sanne', roles: ['nurse'] },
      { name: 'Dag Hollin', mail: 'dag', roles: ['radiographer'] },
      { name: 'Mirre Quist', mail: 'mirre', roles: ['vet'] },
    ],
    xrayRooms: ['X-ray'],
    equipment: [
      { name: 'X-ray table', kind: 'xray', checkedMonthsAhead: 6 },
      { name: 'Distraction device', kind: 'distractionDevice', checkedMonthsAhead: 3 },
    ],
    accredited: [{ staff: 'Dag Hollin', protocols: ['hipLaxity'] }],
    prices: { ...prices, sedationMinor: 8_900, radiographMinor: 3_900 },
    policy,
  },
  {
    key: 'sorn',
    name: 'Sorn Quay Practice',
    place: 'Sorn',
    address: '7 Quay, Sorn',
    phone: '0476 33 12',
    mail: 'sornquay.example',
    letters: 'SQ',
    mayCertify: false,
    staff: [
      { name: 'Ebba Lyndal', mail: 'ebba', roles: ['desk', 'manager'] },
      { name: 'Corin Maas', mail: 'corin', roles: ['nurse', 'radiographer'] },
      { name: 'Tilde Orrin', mail: 'tilde', roles: ['nurse'] },
      { name: 'Jost Averill', mail: 'jost', roles: ['vet'] },
    ],
    xrayRooms: ['X-ray'],
    equipment: [{ name: 'X-ray table', kind: 'xray', checkedMonthsAhead: 8 }],
    accredited: [],
    prices: { ...prices, sedationMinor: 8_400 },
    policy,
  },
];

export const lead: SeedStaff = { name: 'Oda Fering', mail: 'oda', roles: ['lead'] };
