import type { Language } from '#libs/words/languages';
import type { PracticeKey } from './practices.js';

export interface SeedOwner {
  name: string;
  mail: string | null;
  phone: string;
  address: string;
  practice: PracticeKey;
  channel?: 'mail' | 'post';
  language?: Language;
}

const at = (practice: PracticeKey, people: [name: string, mail: string | null, phone: string, address: string][]): SeedOwner[] =>
  people.map(([name, mail, phone, address]) => ({ name, mail: mail && `${mail}.example`, phone, address, practice, channel: mail ? 'mail' : 'post', ...(name === 'Anselm Rook' && { language: 'de' }) }));

/** Invented people of an invented country. One reads no mail, and one reads German. */
export const owners: SeedOwner[] = [
  ...at('weirside', [
    ['Ilse Morwen', 'ilse@longreach', '0470 21 34', 'Long Reach 12, Upper Aldra'],
    ['Lena Stroud', 'lena@hillkarsby', '0472 18 02', 'Kiln Row 4, Karsby'],
    ['Bent Harrow', 'bent@millstair', '0471 40 77', 'Mill Stair 1, Mill Stair'],
    ['Ada Wist', 'ada@sluice', '0473 15 90', 'Eel Weir 9, Sluice Green'],
    ['Dore Halden', 'dore@halden', '0470 27 51', 'Rope Walk 22, Dellin'],
    ['Anselm Rook', 'anselm@rook', '0470 29 13', 'Tanner’s Bank 3, Dellin'],
    ['Pia Ostrand', 'pia@ostrand', '0471 44 08', 'Orchard Side 6, Mill Stair'],
    ['Jonas Vey', 'jonas@vey', '0474 12 66', 'Fold Lane 15, Threnfold'],
    ['Kaspar Lund-Ashe', 'kaspar@lundashe', '0470 22 85', 'Barge Stairs 8, Dellin'],
    ['Teres Vint', 'teres@vint', '0475 30 19', 'Upland Farm, Upper Aldra'],
    ['Hanne Birk', 'hanne@birk', '0470 26 40', 'Willow Yard 2, Dellin'],
    ['Corvin Dahl', 'corvin@dahl', '0472 10 55', 'Marsh Gate 30, Karsby'],
    ['Amo Kestner', 'amo@kestner', '0470 21 88', 'Ferry Street 17, Dellin'],
    ['Nell Abbery', 'nell@abbery', '0476 31 04', 'Sorn Road 5, Sorn'],
    ['Marn Oldacre', 'marn@oldacre', '0475 33 71', 'Oldacre, Upper Aldra'],
    ['Osk Ferrand', null, '0474 19 23', 'Wether Hill 7, Threnfold'],
  ]),
  ...at('karsby', [
    ['Tove Ambry', 'tove@ambry', '0472 11 31', 'Stone Bench 4, Karsby'],
    ['Lorin Esk', 'lorin@esk', '0472 16 78', 'Upper Quarry 11, Karsby'],
  ]),
  ...at('sorn', [['Wenke Salloway', 'wenke@salloway', '0476 35 62', 'Net Loft 2, Sorn']]),
];
