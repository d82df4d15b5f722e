import sharp from 'sharp';
import { part10Header } from '#libs/dicom/part10';
import { partsOf } from '#libs/dicom/parts';
import { PIXELS, readDataSet } from '#libs/dicom/read-data-set';
import { newUid } from '#libs/dicom/uids';
import { endlessHead, writeParts } from '#libs/dicom/write-parts';
import { writeRadiograph } from '#libs/dicom/write-radiograph';

let drawn = 0;

/** A small picture that no other is equal to: a store by content would take two equal ones for one. */
export function aFilm(kind: 'png' | 'jpeg' = 'png'): Promise<Buffer> {
  drawn++;
  const shade = `<svg xmlns="http://www.w3.org/2000/svg" width="240" height="320"><rect width="240" height="320" fill="#222"/><circle cx="${60 + (drawn % 40)}" cy="160" r="30" fill="#bbb"/><text x="10" y="300" fill="#fff">L ${drawn}</text></svg>`;
  const picture = sharp(Buffer.from(shade)).greyscale();
  return (kind === 'png' ? picture.png() : picture.jpeg()).toBuffer();
}

/** A film of a machine, with the owner's name, the dog's and the practice's number in it. */
export function aDicomFilm({ animalId, day }: { animalId: string; day: string }): Buffer {
  drawn++;
  const values = new Uint16Array(64 * 48).map((_, i) => (i * 7 + drawn * 101) % 4096);
  return writeRadiograph({
    dog: { animalId, issuer: 'COTYLA', name: 'Calledname', owner: 'Ann Ownername', sex: 'female', neutered: false, breed: 'Karsby Spitz', transponders: [], studBook: [] },
    studyUid: newUid(), seriesUid: newUid(), accession: 'OURNUMBER', day, time: '10:11:12', instance: 1, region: 'hip', side: 'both', view: { code: 'vdExtended', label: 'Extended, from below' },
    orientation: ['LE', 'CD'], pixels: { rows: 48, columns: 64, bits: 12, values }, spacing: [0.14, 0.14], manufacturer: 'Invented X-ray',
  });
}

/** A picture of about a megabyte: noise does not let itself be made smaller. */
export function aNoisyFilm(): Promise<Buffer> {
  return sharp({ create: { width: 900, height: 1200, channels: 3, background: { r: 90, g: 90, b: 90 }, noise: { type: 'gaussian', mean: 100, sigma: 40 } } }).greyscale().png().toBuffer();
}

const RLE = '1.2.840.10008.1.2.5';
const EXTENDED_JPEG = '1.2.840.10008.1.2.4.51';

/** The same film packed as RLE: DICOM PS3.5 annex G, the high bytes before the low ones, all of them as they are. */
export function inRle(film: Buffer): Buffer {
  const data = readDataSet(film);
  const { dataOffset, length } = data.elements[PIXELS]!;
  const bytes = Buffer.from(data.byteArray.subarray(dataOffset, dataOffset + length));
  const planes = [1, 0].map((half) => runs(Buffer.from(bytes.filter((_, i) => i % 2 === half))));
  const header = Buffer.alloc(64);
  [planes.length, 64, 64 + planes[0]!.length].forEach((number, i) => header.writeUInt32LE(number, 4 * i));
  return withStream(film, RLE, Buffer.concat([header, ...planes]));
}

/** The same film as if it were packed in a way that nothing here unpacks. */
export const inExtendedJpeg = (film: Buffer): Buffer => withStream(film, EXTENDED_JPEG, Buffer.from('ffd8ffd9', 'hex'));

function runs(plane: Buffer): Buffer {
  const parts: Buffer[] = [];
  for (let at = 0; at < plane.length; at += 128) {
    const part = plane.subarray(at, at + 128);
    parts.push(Buffer.from([part.length - 1]), part);
  }
  const all = Buffer.concat(parts);
  return all.length % 2 ? Buffer.concat([all, Buffer.from([128])]) : all;
}

function withStream(film: Buffer, transferSyntax: string, stream: Buffer): Buffer {
  const data = readDataSet(film);
  const item = (tag: number, body: Buffer) => {
    const head = Buffer.alloc(8);
    head.writeUInt16LE(0xfffe, 0);
    head.writeUInt16LE(tag, 2);
    head.writeUInt32LE(body.length, 4);
    return Buffer.concat([head, body]);
  };
  const header = part10Header({ sopClassUid: data.string('x00080016')!, sopInstanceUid: data.string('x00080018')!, transferSyntax });
  return Buffer.concat([header, writeParts(partsOf(data, false, new Set([PIXELS]))), endlessHead(PIXELS, 'OB'), item(0xe000, Buffer.alloc(0)), item(0xe000, stream), item(0xe0dd, Buffer.alloc(0))]);
}
