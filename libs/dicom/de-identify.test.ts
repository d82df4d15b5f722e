import type { DataSet } from 'dicom-parser';
import { dicomFile, pixels16 } from '#test/medium/files-support/dicom-file';
import { actionOn } from './confidentiality-profile.js';
import { copyNumbers } from './copy-numbers.js';
import { deIdentify, type Disclosed } from './de-identify.js';
import { part10Header } from './part10.js';
import type { Part } from './parts.js';
import { readDataSet } from './read-data-set.js';
import { EXPLICIT } from './syntaxes.js';
import { uuidOf } from './uids.js';
import { words, writeParts } from './write-parts.js';

const told: Disclosed = { key: 'k', number: 'P-1A2B3C4D', film: 'a'.repeat(64), dog: { number: 'D-1', sex: 'male', neutered: true, breed: 'Karsby Spitz' } };
const number = (tag: string, value: number): Part => ({ tag, vr: 'US', value: new Uint8Array(Uint16Array.of(value).buffer) });
const PICTURE = [number('x00280002', 1), number('x00280010', 1), number('x00280011', 2), number('x00280100', 8), number('x00280101', 8), { tag: 'x7fe00010', vr: 'OB', value: Uint8Array.of(1, 2) }];

function copyOf(parts: Part[], more: Partial<Disclosed> = {}): { copy: DataSet; said: ReturnType<typeof deIdentify> } {
  const said = deIdentify(Buffer.concat([part10Header({ sopClassUid: '1.2', sopInstanceUid: '1.2', transferSyntax: EXPLICIT }), writeParts([...parts, ...PICTURE])]), { ...told, ...more });
  return { copy: readDataSet(Buffer.concat(said.content)), said };
}

// DICOM PS3.15 table E.1-1
describe('of the confidentiality profile', () => {
  it.each([['x00080090', 'PN', 'empty'], ['x00102297', 'PN', 'remove'], ['x00081070', 'PN', 'remove'], ['x00400275', 'SQ', 'remove'], ['x00189371', 'UT', 'dummy'], ['x00180060', 'DS', 'keep']])('%s (%s) is to be: %s', (tag, vr, action) => expect(actionOn(tag, vr)).toBe(action));
  it('days of the exposure stay, and those of the dog’s life go', () => expect([actionOn('x00080022', 'DA'), actionOn('x00100030', 'DA'), actionOn('x001021d0', 'DA')]).toEqual(['keep', 'empty', 'remove']));
  it('words that no table lists go, and what they are read by stays', () => expect([actionOn('x00187006', 'LT'), actionOn('x00181020', 'LO'), actionOn('x00281054', 'LO'), actionOn('x00080104', 'LO')]).toEqual(['remove', 'remove', 'keep', 'keep']));
  it('private groups, and groups that no radiograph needs, go', () => expect([actionOn('x00091001', 'DS'), actionOn('x60003000', 'OW'), actionOn('x00880200', 'SQ'), actionOn('xfffcfffc', 'OB')]).toEqual(Array(4).fill('remove')));
});

describe('a copy without the owner', () => {
  it('has nothing private at any depth', () => {
    const inside: Part = { tag: 'x00082218', vr: 'SQ', value: [[words('x00080100', 'SH', '24136001'), words('x00091001', 'LO', 'Wist'), { tag: 'x00082220', vr: 'SQ', value: [[words('x00091002', 'LO', 'Wist'), words('x00080102', 'SH', 'SCT')]] }]] };
    const { copy } = copyOf([inside, words('x00110010', 'LO', 'MAKER'), words('x00111001', 'LO', 'Wist')]);
    const region = copy.elements.x00082218!.items![0]!.dataSet!;
    expect(Object.keys(region.elements)).toEqual(['x00080100', 'x00082220']);
    expect(Object.keys(region.elements.x00082220!.items![0]!.dataSet!.elements)).toEqual(['x00080102']);
    expect(Buffer.from(copy.byteArray).includes('Wist')).toBe(false);
    expect(Object.keys(copy.elements).filter((tag) => parseInt(tag.slice(1, 5), 16) % 2)).toEqual([]);
  });

  it('has no number of the film’s own, at any depth, but those of the standard', () => {
    const { copy } = copyOf([words('x00080018', 'UI', '1.2.3'), words('x00200052', 'UI', '1.2.4'), words('x00083010', 'UI', '1.2.5', '1.2.6'), { tag: 'x00189506', vr: 'SQ', value: [[words('x00081150', 'UI', '1.2.840.10008.5.1.4.1.1.1'), words('x00081155', 'UI', '1.2.3')]] }]);
    const event = copy.string('x00083010')!.split('\\');
    expect([copy.string('x00080018'), copy.string('x00200052'), copy.string('x0020000e'), ...event].map((uid) => uuidOf(uid!)).every(Boolean)).toBe(true);
    expect(new Set(event).size).toBe(2);
    const inside = copy.elements.x00189506!.items![0]!.dataSet!;
    expect([inside.string('x00081150'), uuidOf(inside.string('x00081155')!) !== undefined]).toEqual(['1.2.840.10008.5.1.4.1.1.1', true]);
  });

  it('has the same numbers again, and others under another number or key', () => {
    const of = (key: string, name: string) => { const { study, film, other } = copyNumbers(key, name); return [study, film('a'), film('b'), other('1.2')]; };
    expect(of('k', 'P-1')).toEqual(of('k', 'P-1'));
    expect(new Set([...of('k', 'P-1'), ...of('k', 'P-2'), ...of('l', 'P-1')]).size).toBe(12);
    expect(copyOf([]).said).toMatchObject({ sopInstanceUid: copyNumbers('k', told.number).film(told.film), studyUid: copyNumbers('k', told.number).study });
  });

  it('goes by what an element is, not by what the file calls it, and has none that nobody knows', () => {
    const { copy } = copyOf([words('x00080080', 'CS', 'WIST'), words('x00187006', 'CS', 'WIST'), words('x00181020', 'DS', 'WIST'), words('x00189999', 'CS', 'WIST'), { tag: 'x00181030', vr: 'SQ', value: [[words('x00080104', 'LO', 'WIST')]] }, words('x00280004', 'LO', 'MONOCHROME2')]);
    expect(Buffer.from(copy.byteArray).includes('WIST')).toBe(false);
    expect([copy.elements.x00280004!.vr, copy.string('x00280004')]).toEqual(['CS', 'MONOCHROME2']);
  });

  it('tells the dog’s age in whole months in place of its birth', () => {
    const { copy } = copyOf([words('x00100030', 'DA', '20240115'), words('x00080022', 'DA', '20260514')]);
    expect([copy.string('x00101010'), copy.string('x00100030')]).toEqual(['027M', undefined]);
    expect(copyOf([words('x00101010', 'AS', '002Y')]).copy.string('x00101010')).toBe('002Y');
  });

  it.each([['NO', 'no', 'YES', 'NO'], ['YES', 'yes', 'NO', 'YES'], [undefined, 'unsaid', 'NO', 'YES']])('of a film that says %s of words in the picture claims no more than that', (says, burnedIn, removed, kept) => {
    const { copy, said } = copyOf(says ? [words('x00280301', 'CS', says)] : []);
    expect([said.burnedIn, copy.string('x00120062'), copy.string('x00280301')]).toEqual([burnedIn, removed, kept]);
    expect(copy.elements.x00120064!.items!.map((item) => item.dataSet!.string('x00080100'))).toEqual(['113100', '113106', '113108']);
  });

  it('copies no pixels', () => {
    const film = dicomFile({ pixels: pixels16(0, 1000, 2000, 3000, 4000, 4095) });
    expect(deIdentify(film, told).content.some((part) => part.buffer === film.buffer && part.length === 12)).toBe(true);
  });

  it('is not made of a film that is damaged', () => expect(() => deIdentify(dicomFile({ pixels: pixels16(1, 2, 3, 4, 5, 6) }).subarray(0, -4), told)).toThrow(expect.objectContaining({ name: 'ImageRefused' })));
});
