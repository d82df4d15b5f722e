import { readHead } from './read-data-set.js';
import { part10Header } from './part10.js';
import { partsOf, type Part } from './parts.js';
import { EXPLICIT } from './syntaxes.js';
import { elementHead, words, writeParts } from './write-parts.js';

/** DICOM PS3.4 annex I: the directory of a medium. */
const MEDIA_DIRECTORY = '1.2.840.10008.1.3.10';

export interface MediaFile {
  /** As `mediaName` gives it. */
  name: string;
  /** The file, or as much of it as stands before its pixels. */
  head: Buffer;
}

/** Where the n-th file stands on a medium, from 1: names of at most eight capital letters and digits (DICOM PS3.10 section 8.2). The directory itself is the file DICOMDIR beside the folder. */
export const mediaName = (n: number): string => `DICOM/I${String(n).padStart(7, '0')}`;

type Kind = 'PATIENT' | 'STUDY' | 'SERIES' | 'IMAGE';
interface Entry { kind: Kind; own: Part[]; below: Map<string, Entry> }
/** An entry, where it begins in the file, and who its neighbours are. */
interface Placed { entry: Entry; at: number; next: Placed | undefined; first: Placed | undefined }

/** The file DICOMDIR of a medium (DICOM PS3.3 annex F): each dog's studies, their series, and in these the films with the files that they are in. */
export function mediaDirectory(files: readonly MediaFile[], fileSetUid: string): Buffer {
  const roots = new Map<string, Entry>();
  files.forEach((file, i) => enter(roots, file, i + 1));
  const header = part10Header({ sopClassUid: MEDIA_DIRECTORY, sopInstanceUid: fileSetUid, transferSyntax: EXPLICIT });
  const top = (first: number, last: number) => writeParts([words('x00041130', 'CS', 'COTYLA'), long('x00041200', first), long('x00041202', last), short('x00041212', 0)]);
  const begin = header.length + top(0, 0).length + elementHead('x00041220', 'SQ', 0).length;
  const { placed, level } = place([...roots.values()], begin);
  const records: Part = { tag: 'x00041220', vr: 'SQ', value: placed.map(recordOf) };
  return Buffer.concat([header, top(level[0]?.at ?? 0, level.at(-1)?.at ?? 0), writeParts([records])]);
}

function enter(roots: Map<string, Entry>, { name, head }: MediaFile, n: number): void {
  if (!/^[A-Z0-9_]{1,8}(\/[A-Z0-9_]{1,8}){0,7}$/.test(name)) throw new RangeError(`"${name}" is no name of a file on a medium`);
  const data = readHead(head);
  const there = new Map(partsOf(data, false).map((part) => [part.tag, part]));
  const text = (tag: string, otherwise = '') => data.string(tag)?.trim() || otherwise;
  const key = (tag: string, vr: string, otherwise = ''): Part => (there.get(tag)?.value.length ? there.get(tag)! : words(tag, vr, otherwise));
  const [patient, study, series, image] = [text('x00100020', 'UNKNOWN'), text('x0020000d'), text('x0020000e'), text('x00080018')];
  const day = text('x00080020', text('x00080022', '19000101'));
  const letters = there.get('x00080005');

  const of = (level: Map<string, Entry>, id: string, kind: Kind, own: Part[]): Map<string, Entry> => {
    if (!level.has(id)) level.set(id, { kind, own: letters ? [letters, ...own] : own, below: new Map() });
    return level.get(id)!.below;
  };
  const studies = of(roots, patient, 'PATIENT', [key('x00100010', 'PN'), words('x00100020', 'LO', patient)]);
  // A medium wants a day, a time and a number of each study; where the film has none, those that toolkits put there too.
  const seriesOf = of(studies, study, 'STUDY', [words('x00080020', 'DA', day), key('x00080030', 'TM', '000000'), key('x00080050', 'SH'), key('x00081030', 'LO'), words('x0020000d', 'UI', study), key('x00200010', 'SH', '1')]);
  const images = of(seriesOf, series, 'SERIES', [key('x00080060', 'CS', 'OT'), words('x0020000e', 'UI', series), key('x00200011', 'IS', '1')]);
  if (images.has(image)) throw new RangeError(`two files are the same image, ${image}`);
  const file = [words('x00041500', 'CS', ...name.split('/')), words('x00041510', 'UI', text('x00080016')), words('x00041511', 'UI', image), words('x00041512', 'UI', text('x00020010'))];
  of(images, image, 'IMAGE', [...file, key('x00200013', 'IS', String(n))]);
}

/** Depth first: what lies below an entry follows it. */
function place(entries: Entry[], from: number): { placed: Placed[]; level: Placed[]; to: number } {
  const [placed, level]: [Placed[], Placed[]] = [[], []];
  let at = from;
  for (const entry of entries) {
    const mine: Placed = { entry, at, next: undefined, first: undefined };
    const below = place([...entry.below.values()], at + writeParts([{ tag: 'x00041220', vr: 'SQ', value: [recordOf(mine)] }]).length - elementHead('x00041220', 'SQ', 0).length);
    mine.first = below.level[0];
    if (level.length > 0) level.at(-1)!.next = mine;
    level.push(mine);
    placed.push(mine, ...below.placed);
    at = below.to;
  }
  return { placed, level, to: at };
}

const recordOf = ({ entry, next, first }: Placed): Part[] =>
  [long('x00041400', next?.at ?? 0), short('x00041410', 0xffff), long('x00041420', first?.at ?? 0), words('x00041430', 'CS', entry.kind), ...entry.own];

function long(tag: string, number: number): Part {
  const value = Buffer.alloc(4);
  value.writeUInt32LE(number);
  return { tag, vr: 'UL', value };
}

function short(tag: string, number: number): Part {
  const value = Buffer.alloc(2);
  value.writeUInt16LE(number);
  return { tag, vr: 'US', value };
}
