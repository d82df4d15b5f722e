import { z } from 'zod';
import { email, id, localDay, name, password, phone, role, sentence } from './common.js';

export const channel = z.enum(['mail', 'post', 'none']);
export const personRoles = ['owner', 'coOwner', 'breeder', 'agent', 'payer', 'addressee'] as const;
export const personRole = z.enum(personRoles);

export const newPerson = z.object({
  name,
  latinName: name.optional(),
  email: email.optional(),
  phone: phone.optional(),
  address: z.string().trim().max(400).optional(),
  channel: channel.default('mail'),
  language: z.string().length(2).default('en'),
});
export const person = newPerson.extend({ id });
export type Person = z.infer<typeof person>;

export const precision = z.enum(['day', 'month', 'year', 'estimate']);
/** Earliest and latest possible day, the same when known. Ages count from the latest. */
export const birth = z.object({ earliest: localDay, latest: localDay, precision });
export type Birth = z.infer<typeof birth>;

export const newIdentifier = z.object({
  kind: z.enum(['transponder', 'olderTransponder', 'tattoo', 'none']),
  value: z.string().trim().max(40).default(''),
  how: z.enum(['scanned', 'typedTwice']),
  /** The second typing, for typedTwice. */
  again: z.string().trim().max(40).optional(),
});
export const identifier = z.object({ kind: z.string(), value: z.string(), shown: z.string(), how: z.string(), from: localDay, until: localDay.nullable() });

export const sex = z.enum(['male', 'female']);
export const newDog = z.object({
  name,
  callName: name.optional(),
  latinName: name.optional(),
  breed: name,
  sex,
  neutered: z.boolean().default(false),
  birth,
  identifier: newIdentifier,
  studBook: z.array(z.object({ book: name, number: name })).max(5).default([]),
  sireName: name.optional(),
  damName: name.optional(),
  /** An owner already known, or a new one. */
  owner: z.union([z.object({ person: id }), z.object({ new: newPerson })]),
  breeder: name.optional(),
});
export type NewDog = z.infer<typeof newDog>;

export const dog = z.object({
  id,
  animalId: z.string(),
  name: z.string(),
  callName: z.string(),
  breed: z.string(),
  sex,
  neutered: z.boolean(),
  birth,
  died: localDay.nullable(),
  identifiers: z.array(identifier),
  names: z.array(z.object({ name: z.string(), from: localDay })),
  /** Animal numbers of entries that turned out to be this dog; they still find it. */
  merged: z.array(z.object({ animalId: z.string(), why: z.string(), by: z.string(), at: z.string() })),
  studBook: z.array(z.object({ book: z.string(), number: z.string() })),
  sire: z.string().nullable(),
  dam: z.string().nullable(),
  people: z.array(z.object({ person, role: personRole, from: localDay, until: localDay.nullable() })),
});
export type Dog = z.infer<typeof dog>;

export const dogListRow = z.object({ id, name: z.string(), callName: z.string(), breed: z.string(), sex, born: localDay, transponder: z.string(), owner: z.string(), phone: z.string() });
export type DogListRow = z.infer<typeof dogListRow>;

export const renameDog = z.object({ name, latinName: name.optional(), from: localDay });
export const addIdentifier = newIdentifier.extend({ from: localDay });
/** With `until` it is over; for a role that stands since `from`, this is its end. */
export const addPersonRole = z.object({ person: id, role: personRole, from: localDay, until: localDay.optional() });

// A practice's own register, kept by its manager.
export const newStaff = z.object({ name, email, roles: z.array(role).min(1, 'Choose at least one role.'), password });
export const staff = z.object({ id, name: z.string(), email: z.string(), roles: z.array(role), active: z.boolean() });
export const newRoom = z.object({ name, kind: z.enum(['xray', 'ward', 'consulting']) });
export const room = z.object({ id, name: z.string(), kind: z.string() });
export const newEquipment = z.object({ name, kind: z.enum(['xray', 'distractionDevice', 'loadFrame', 'monitor']), checkedUntil: localDay });
export const equipment = z.object({
  id, name: z.string(), kind: z.string(), checkedUntil: localDay,
  /** Of a detector: how large its pixels are, as somebody last said; null where they do not know it any more. */
  pixels: z.object({ mm: z.number().nullable(), on: localDay, by: z.string() }).nullable(),
});
export const newAccreditation = z.object({ staff: id, protocol: z.string().max(40), from: localDay, until: localDay, evidence: sentence });
export const accreditation = z.object({ id, staff: id, staffName: z.string(), protocol: z.string(), protocolName: z.string(), from: localDay, until: localDay, evidence: z.string() });
export const textKinds = ['advice', 'goingHome', 'consentSedation', 'consentSendAll', 'consentStatistics'] as const;
/** A text a vet of the practice approved; a new version never changes an old one. */
export const newText = z.object({ kind: z.enum(textKinds), title: name, forDogs: z.string().trim().max(200).default('every dog'), body: z.string().trim().min(20).max(10_000), language: z.string().length(2).default('en') });
export const text = newText.extend({ id, version: z.string(), approvedBy: z.string(), approvedAt: z.string() });
export type PracticeText = z.infer<typeof text>;
export const prices = z.object({
  currency: z.string().length(3),
  taxPercent: z.number().min(0).max(50),
  sedationMinor: z.int().min(0),
  radiographMinor: z.int().min(0),
  sendingMinor: z.int().min(0),
});
export type Prices = z.infer<typeof prices>;
export const newCentre = z.object({
  name,
  place: name,
  email,
  zone: z.string().min(1).max(60),
  region: z.string().max(20).optional(),
  holidays: z.array(localDay).max(200).default([]),
  ackDays: z.int().min(1).max(30).default(3),
  resultDays: z.int().min(1).max(60).default(10),
  remindEvery: z.int().min(1).max(30).default(3),
  reminders: z.int().min(0).max(10).default(2),
  appealDays: z.int().min(1).max(120).default(30),
  feeMinor: z.int().min(0).default(0),
  protocols: z.array(z.string().max(40)).min(1),
});
export const centre = newCentre.extend({ id });
/** The reader chooses a password behind a link that goes to the centre's own address: whoever enters a name gains no view. */
export const newReader = z.object({ name, email });

export const practiceScreen = z.object({
  practice: z.object({ id, name: z.string(), address: z.string(), phone: z.string(), email: z.string(), zone: z.string(), mayCertify: z.boolean() }),
  prices,
  staff: z.array(staff),
  rooms: z.array(room),
  equipment: z.array(equipment),
  accreditations: z.array(accreditation),
  texts: z.array(text),
  centres: z.array(centre),
  protocols: z.array(z.object({ code: z.string(), version: z.string(), name: z.string(), needsAccreditation: z.boolean() })),
  /** What is still missing before the first dog can be booked, in words. */
  missing: z.array(z.string()),
});
export type PracticeScreen = z.infer<typeof practiceScreen>;
