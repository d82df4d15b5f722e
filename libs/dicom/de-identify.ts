import type { DataSet } from 'dicom-parser';
import { actionOn } from './confidentiality-profile.js';
import { copyNumbers, type CopyNumbers } from './copy-numbers.js';
import { disclosedDog, type DisclosedDog } from './disclosed-dog.js';
import { latin } from './dog-attributes.js';
import { dayOf } from './elements.js';
import { truncated } from './image-shape.js';
import { part10Header } from './part10.js';
import { partsOf, turned, type Part } from './parts.js';
import { inflated, PIXELS, readDataSet } from './read-data-set.js';
import { dicomSyntax, EXPLICIT } from './syntaxes.js';
import { sopClasses } from './uids.js';
import { codes, elementHead, endlessHead, words, writeParts } from './write-parts.js';

/** What a centre is told with a film. */
export interface Disclosed extends DisclosedDog {
  /** The secret that UIDs are made with; one for each centre keeps two of them from comparing their films. */
  key: string;
  /** The film's own hash. */
  film: string;
  view?: { code: string; label: string };
  /** How the picture came to be what it is, in words that name nobody. */
  derivation?: string;
}

export interface Copy {
  /** One after the other they are the file; the pixels are those of the film, not copied. */
  content: Buffer[];
  sopClassUid: string;
  sopInstanceUid: string;
  seriesUid: string;
  studyUid: string;
  transferSyntax: string;
  /** Whether words stand in the picture itself, as far as the film says. They are not touched. */
  burnedIn: 'yes' | 'no' | 'unsaid';
}

const METHODS = [
  { value: '113100', scheme: 'DCM', meaning: 'Basic Application Confidentiality Profile' },
  { value: '113106', scheme: 'DCM', meaning: 'Retain Longitudinal Temporal Information Full Dates Option' },
  { value: '113108', scheme: 'DCM', meaning: 'Retain Patient Characteristics Option' },
];

/**
 * A film for a centre that grades it, without owner, practice, staff and machine: DICOM PS3.15 annex E, Basic Application Level
 * Confidentiality Profile, with two of its options. Full dates stay, as the dog's age is judged on the day of exposure; the birth date goes,
 * and the age in months stands for it. Characteristics stay: sex, neutered, age, size, weight, and species and breed, which the table does not know.
 * View, side, size of the pixels and exposure are no identities to it and stay. UIDs are replaced by a keyed rule (see `copyNumbers`);
 * those of the standard itself are kept. An attribute that an object of an animal must have is left empty where the table would take it out.
 *
 * What is written in the picture itself is not looked at. Only a film that says it has no such words is said to be without identity
 * (Patient Identity Removed speaks of the pixels too); of any other one, the film's copy says NO. `content` must have passed `checkDicom`.
 */
export function deIdentify(content: Buffer, told: Disclosed): Copy {
  const film = inflated(content);
  const data = readDataSet(film);
  const syntax = dicomSyntax(data.string('x00020010') ?? '');
  if (!syntax || !data.elements[PIXELS]) throw truncated();
  const bigEndian = !syntax.compressed && syntax.bigEndian;
  const numbers = copyNumbers(told.key, told.number);
  const transferSyntax = syntax.compressed ? data.string('x00020010')! : EXPLICIT;
  const sopClassUid = data.string('x00080016')?.trim() || sopClasses.dxForPresentation;
  const ids = { sopClassUid, sopInstanceUid: numbers.film(told.film), studyUid: numbers.study, transferSyntax };
  const burnedIn = { YES: 'yes', NO: 'no' }[data.string('x00280301')?.trim() ?? ''] as 'yes' | 'no' | undefined;

  const parts = new Map(cleaned(partsOf(data, bigEndian, new Set([PIXELS])), numbers).map((part) => [part.tag, part]));
  for (const part of added(told, ids, burnedIn ?? 'unsaid')) parts.set(part.tag, part);
  const series = data.string('x0020000e')?.trim();
  const seriesUid = numbers.other(series ?? `series of ${told.film}`);
  parts.set('x0020000e', words('x0020000e', 'UI', seriesUid));
  const age = data.string('x00101010')?.trim() || ageInMonths(data);
  if (age) parts.set('x00101010', words('x00101010', 'AS', age));

  const head = Buffer.concat([part10Header(ids), writeParts([...parts.values()])]);
  return { ...ids, seriesUid, burnedIn: burnedIn ?? 'unsaid', content: [head, ...pixelsOf(film, data, bigEndian)] };
}

/** Item by item, at any depth. */
function cleaned(parts: Part[], numbers: CopyNumbers): Part[] {
  return parts.flatMap((part): Part[] => {
    const { tag, vr, value } = part;
    const action = actionOn(tag, vr);
    if (action === 'remove' || (action === 'dummy' && Array.isArray(value))) return [];
    if (action === 'empty') return [{ tag, vr, value: Array.isArray(value) ? [] : Buffer.alloc(0) }];
    if (action === 'dummy') return [words(tag, vr, 'REMOVED')];
    if (Array.isArray(value)) return [{ tag, vr, value: value.map((item) => cleaned(item, numbers)) }];
    return [vr === 'UI' ? words(tag, vr, ...textOf(value).split('\\').map((uid) => replaced(uid, numbers))) : part];
  });
}

const textOf = (value: Uint8Array): string => Buffer.from(value).toString('latin1').replace(/[\0 ]+$/, '');
/** What the standard itself numbers names nobody. */
const replaced = (uid: string, numbers: CopyNumbers): string => (uid === '' || uid.startsWith('1.2.840.10008.') ? uid : numbers.other(uid));

function added({ number, dog, view, derivation }: Disclosed, ids: Pick<Copy, 'sopClassUid' | 'sopInstanceUid' | 'studyUid'>, burnedIn: Copy['burnedIn']): Part[] {
  const label = view && latin(view.label).slice(0, 64);
  const methods = view ? [METHODS[0]!, { value: '113105', scheme: 'DCM', meaning: 'Clean Descriptors Option' }, ...METHODS.slice(1)] : METHODS;
  return [
    words('x00080016', 'UI', ids.sopClassUid), words('x00080018', 'UI', ids.sopInstanceUid), words('x0020000d', 'UI', ids.studyUid),
    ...disclosedDog({ number, dog }),
    words('x00120062', 'CS', burnedIn === 'no' ? 'YES' : 'NO'), words('x00120063', 'LO', 'DICOM PS3.15 annex E, attributes only'), codes('x00120064', ...methods),
    ...(burnedIn === 'unsaid' ? [words('x00280301', 'CS', 'YES')] : []), words('x00280303', 'CS', 'UNMODIFIED'),
    ...(derivation ? [words('x00082111', 'ST', derivation)] : []),
    ...(view ? [words('x0008103e', 'LO', label!), words('x00181030', 'LO', label!), codes('x00400260', { value: view.code, scheme: '99COTYLA', meaning: label! })] : []),
  ];
}

/** Whole months, so that the day of birth cannot be told from it (DICOM PS3.5 section 6.2, AS). */
function ageInMonths(data: DataSet): string | undefined {
  const [born, taken] = [dayOf(data.string('x00100030')), dayOf(data.string('x00080022') ?? data.string('x00080020'))];
  if (!born || !taken) return undefined;
  const [from, to] = [born, taken].map((day) => day.split('-').map(Number) as [number, number, number]) as [[number, number, number], [number, number, number]];
  const months = (to[0] - from[0]) * 12 + to[1] - from[1] - (to[2] < from[2] ? 1 : 0);
  return months >= 0 && months < 1000 ? `${String(months).padStart(3, '0')}M` : undefined;
}

function pixelsOf(film: Buffer, data: DataSet, bigEndian: boolean): Buffer[] {
  const { dataOffset, length, vr = 'OW', encapsulatedPixelData } = data.elements[PIXELS]!;
  const bytes = film.subarray(dataOffset, dataOffset + length);
  if (bytes.length < length) throw truncated();
  if (encapsulatedPixelData) return [endlessHead(PIXELS, 'OB'), bytes];
  const value = bigEndian ? Buffer.from(turned(bytes, vr)) : bytes;
  const padding = Buffer.alloc(value.length % 2);
  return [elementHead(PIXELS, vr, value.length + padding.length), value, padding];
}
