import { dicomFile, pixels16 } from '#test/medium/files-support/dicom-file';
import { mediaDirectory, mediaName } from './media-directory.js';
import { readDataSet } from './read-data-set.js';

const film = (uid: string) => dicomFile({ pixels: pixels16(1, 2, 3, 4, 5, 6), more: [[0x0008, 0x0018, 'UI', uid], [0x0020, 0x000d, 'UI', '1.2'], [0x0020, 0x000e, 'UI', '1.3']] });
const directory = (...uids: string[]) => readDataSet(mediaDirectory(uids.map((uid, i) => ({ name: mediaName(i + 1), head: film(uid) })), '1.9'));

describe('the directory of a medium', () => {
  it('leads from its first entry down to each film, and from film to film', () => {
    const data = directory('1.4', '1.5');
    const content = Buffer.from(data.byteArray);
    const begins = (offset: number) => data.elements.x00041220!.items!.find((item) => item.dataOffset - 8 === offset)!.dataSet!;
    let entry = begins(data.uint32('x00041200')!);
    const path = [entry];
    for (let below = entry.uint32('x00041420'); below; below = entry.uint32('x00041420')) path.push(entry = begins(below));
    expect(path.map((e) => e.string('x00041430'))).toEqual(['PATIENT', 'STUDY', 'SERIES', 'IMAGE']);
    const second = begins(entry.uint32('x00041400')!);
    expect([entry, second].map((e) => e.string('x00041500'))).toEqual(['DICOM\\I0000001', 'DICOM\\I0000002']);
    expect([second.uint32('x00041400'), content.length % 2]).toEqual([0, 0]);
  });

  it('has no two entries for one image, and no names that a medium cannot have', () => {
    expect(() => directory('1.4', '1.4')).toThrow('the same image');
    for (const name of ['../X', 'dicom/x', 'DICOM/LONGNAME1', '', 'A\\B', 'A.DCM']) expect(() => mediaDirectory([{ name, head: film('1.4') }], '1.9')).toThrow('no name');
  });
});
