import type { Breed } from './breeds.js';

/** A dog of the demo. Its age is counted back from today, so that it fits the protocols whenever the demo is started. */
export interface SeedDog {
  call: string;
  registered: string;
  /** What it was called first, where it was renamed. */
  formerly?: string;
  breed: Breed;
  sex: 'male' | 'female';
  neutered?: boolean;
  ageDays: number;
  /** Only the month of its birth is known. */
  monthOnly?: boolean;
  owner: string;
  coOwner?: string;
  breeder?: string;
  sire?: string;
  dam?: string;
}

type Row = [call: string, registered: string, breed: Breed, sex: 'm' | 'f', ageDays: number, owner: string, more?: Partial<SeedDog>];

const longReach = { sire: 'Harl of the Long Reach', dam: 'Merle of Eel Weir', breeder: 'Ilse Morwen' };
const barge = { sire: 'Old Bram of Barge Stairs', dam: 'Hanka of the Locks', breeder: 'Kaspar Lund-Ashe' };
const marsh = { sire: 'Goliath of Marsh Gate', dam: 'Bruna of Marsh Gate', breeder: 'Corvin Dahl' };

const rows: Row[] = [
  // Here today
  ['Pebble', 'Pebble of Kiln Row', 'Karsby Spitz', 'f', 610, 'Lena Stroud'],
  ['Sorrel', 'Sorrel of Eel Weir', 'Sornish Setter', 'f', 540, 'Ada Wist'],
  ['Thistle', 'Thistle of Wether Hill', 'Dellin Ratter', 'f', 480, 'Osk Ferrand'],
  ['Gale', 'Gale of Mill Stair', 'Sornish Setter', 'm', 505, 'Bent Harrow'],
  ['Tolle', 'Tolle of Tanner’s Bank', 'Karsby Spitz', 'm', 700, 'Anselm Rook', { neutered: true }],
  ['Fennec', 'Fennec of Orchard Side', 'Dellin Ratter', 'f', 560, 'Pia Ostrand'],
  ['Alder', 'Alder of the Long Reach', 'Aldra Water Hound', 'm', 430, 'Ilse Morwen', longReach],
  ['Wenna', 'Wenna of Rope Walk', 'Sornish Setter', 'f', 620, 'Dore Halden'],
  ['Otter', 'Otter of Barge Stairs', 'Bargeman’s Dog', 'm', 660, 'Kaspar Lund-Ashe', barge],
  ['Moss', 'Moss of Upland Farm', 'Upland Pointer', 'm', 515, 'Teres Vint'],
  ['Ember', 'Ember of the Long Reach', 'Aldra Water Hound', 'f', 430, 'Ilse Morwen', longReach],
  ['Sedge', 'Sedge of the Long Reach', 'Aldra Water Hound', 'f', 430, 'Hanne Birk', longReach],
  ['Pilot', 'Pilot of Marsh Gate', 'Marsh Mastiff', 'm', 760, 'Corvin Dahl', marsh],
  ['Juniper', 'Juniper of Upland Farm', 'Upland Pointer', 'f', 515, 'Teres Vint'],
  ['Hazel', 'Hazel of Sorn Road', 'Sornish Setter', 'f', 590, 'Nell Abbery'],
  ['Ash', 'Ash of Upland Farm', 'Upland Pointer', 'm', 880, 'Teres Vint'],
  // On other days
  ['Basalt', 'Basalt of Marsh Gate', 'Marsh Mastiff', 'm', 760, 'Corvin Dahl', marsh],
  ['Nettle', 'Nettle of Kiln Row', 'Karsby Spitz', 'f', 450, 'Lena Stroud'],
  ['Skerry', 'Skerry of Barge Stairs', 'Bargeman’s Dog', 'f', 170, 'Kaspar Lund-Ashe', { ...barge, dam: 'Otti of the Locks' }],
  ['Tam', 'Tam of Barge Stairs', 'Bargeman’s Dog', 'm', 170, 'Kaspar Lund-Ashe', { ...barge, dam: 'Otti of the Locks' }],
  ['Rill', 'Rill of Fold Lane', 'Threnfold Shepherd', 'f', 640, 'Amo Kestner'],
  ['Drift', 'Drift of Oldacre', 'Aldra Water Hound', 'm', 720, 'Marn Oldacre'],
  ['Moth', 'Moth of Orchard Side', 'Dellin Ratter', 'f', 520, 'Pia Ostrand'],
  // On the road to a reader
  ['Flint', 'Flint of Kiln Row', 'Karsby Spitz', 'm', 610, 'Lena Stroud'],
  ['Corrie', 'Corrie of Rope Walk', 'Sornish Setter', 'f', 675, 'Dore Halden', { coOwner: 'Anselm Rook' }],
  ['Bryn', 'Bryn of Barge Stairs', 'Bargeman’s Dog', 'm', 260, 'Kaspar Lund-Ashe'],
  ['Quill', 'Quill of Fold Lane', 'Threnfold Shepherd', 'm', 650, 'Jonas Vey'],
  ['Bracken', 'Bracken of Fold Lane', 'Threnfold Shepherd', 'm', 650, 'Jonas Vey'],
  ['Linnet', 'Linnet of Willow Yard', 'Dellin Ratter', 'f', 800, 'Hanne Birk'],
  ['Sleet', 'Sleet of Oldacre', 'Karsby Spitz', 'm', 540, 'Marn Oldacre'],
  ['Reed', 'Reed of Eel Weir', 'Aldra Water Hound', 'm', 560, 'Ada Wist'],
  ['Grayle', 'Grayle of Mill Stair', 'Sornish Setter', 'm', 580, 'Bent Harrow'],
  ['Lark', 'Lark of Wether Hill', 'Upland Pointer', 'f', 600, 'Nell Abbery'],
  ['Brannoch', 'Brannoch of the Long Reach', 'Aldra Water Hound', 'm', 455, 'Ilse Morwen', { formerly: 'Bran of the Long Reach', breeder: 'Bent Harrow', sire: 'Harl of the Long Reach', dam: 'Tansy of Mill Stair' }],
  ['Tarn', 'Tarn of Mill Stair', 'Sornish Setter', 'f', 960, 'Bent Harrow'],
  // Read
  ['Cinder', 'Cinder of Tanner’s Bank', 'Karsby Spitz', 'f', 640, 'Anselm Rook'],
  ['Heron', 'Heron of Sluice Bank', 'Aldra Water Hound', 'm', 690, 'Ada Wist'],
  ['Rowan', 'Rowan of Upland Farm', 'Upland Pointer', 'm', 710, 'Teres Vint'],
  ['Cobble', 'Cobble of Ferry Street', 'Dellin Ratter', 'm', 820, 'Amo Kestner', { monthOnly: true }],
  ['Tansy', 'Tansy of Orchard Side', 'Threnfold Shepherd', 'f', 900, 'Pia Ostrand'],
  ['Slate', 'Slate of Marsh Gate', 'Marsh Mastiff', 'm', 930, 'Corvin Dahl', { neutered: true }],
  ['Fern', 'Fern of Willow Yard', 'Aldra Water Hound', 'f', 780, 'Hanne Birk'],
  // At the other practices
  ['Lichen', 'Lichen of Stone Bench', 'Karsby Spitz', 'f', 530, 'Tove Ambry'],
  ['Kestrel', 'Kestrel of Upper Quarry', 'Upland Pointer', 'm', 615, 'Lorin Esk'],
  ['Mallow', 'Mallow of the Net Loft', 'Aldra Water Hound', 'f', 575, 'Wenke Salloway'],
];

export const dogs: SeedDog[] = rows.map(([call, registered, breed, sex, ageDays, owner, more]) => ({
  call, registered, breed, sex: sex === 'm' ? 'male' : 'female', ageDays, owner, ...more,
}));

/** Numbers that no country or maker gives out: 999 stands for tests. */
export const transponderOf = (dog: SeedDog): string => `999000${String(1_402_551 + 317 * dogs.indexOf(dog)).padStart(9, '0')}`;
