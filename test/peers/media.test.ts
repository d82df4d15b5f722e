import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { deIdentify } from '#libs/dicom/de-identify';
import { mediaDirectory, mediaName } from '#libs/dicom/media-directory';
import { newUid } from '#libs/dicom/uids';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { describeWithPeer } from '#test/support/peers';
import { aRadiograph, shades } from './support/a-film.js';
import { DicomPrograms } from './support/dicom-programs.js';

const told = (dog: string, film: string, number = 'P-1A2B3C4D') => ({ key: 'k', number, film, dog: { number: dog, sex: 'male', neutered: true, breed: 'Karsby Spitz' } }) as const;

describeWithPeer('dciodvfy', 'a medium', () => {
  let programs: DicomPrograms;
  beforeAll(() => {
    programs = new DicomPrograms();
    mkdirSync(path.join(programs.folder, 'DICOM'));
    const [small, series] = [shades(8, 8, 12), newUid()];
    const film = (instance: number, seriesUid = series) => writeRadiograph(aRadiograph({ instance, seriesUid, pixels: { rows: 8, columns: 8, bits: 12, values: small } }));
    const copies = [
      deIdentify(film(1), told('D-1', 'a')), deIdentify(film(2), told('D-1', 'b')), deIdentify(film(1, newUid()), told('D-1', 'c')),
      deIdentify(film(1), told('D-1', 'a', 'P-99999999')), deIdentify(film(1), told('D-2', 'd', 'P-88888888')),
    ];
    const files = copies.map(({ content }, i) => ({ name: mediaName(i + 1), head: content[0]!, content: Buffer.concat(content) }));
    for (const { name, content } of files) writeFileSync(path.join(programs.folder, name), content);
    programs.put('DICOMDIR', mediaDirectory(files, newUid()));
  });
  afterAll(() => programs.close());

  const run = (program: string, ...args: string[]) => execFileSync(program, args, { cwd: programs.folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  /** Kinds of records, and what each is known by, in the order in which one comes to them from the first. */
  const read = (file: string) => run('dcmdump', '-q', '+P', '0004,1430', '+P', '0004,1500', '+P', '0004,1511', '+P', '0010,0020', '+P', '0020,000d', '+P', '0020,000e', file).split('\n').map((line) => line.replace(/#.*/, '').trim());

  it('has a directory without errors', () => {
    expect(programs.verify(readFileSync(path.join(programs.folder, 'DICOMDIR'))).errors).toEqual([]);
  });

  it('has the directory that dcmtk makes of the same files', () => {
    const ours = read('DICOMDIR');
    copyFileSync(path.join(programs.folder, 'DICOMDIR'), path.join(programs.folder, 'ours'));
    run('dcmmkdir', '+r', '-Pgp', '+D', 'THEIRS', 'DICOM');
    expect(ours.filter((line) => line.includes('IMAGE')).length).toBe(5);
    expect([...ours].sort()).toEqual([...read('THEIRS')].sort());
  });

  it('is one that dcmtk finds its way in, and adds to', () => {
    const more = deIdentify(writeRadiograph(aRadiograph()), told('D-3', 'e', 'P-77777777'));
    writeFileSync(path.join(programs.folder, mediaName(6)), Buffer.concat(more.content));
    copyFileSync(path.join(programs.folder, 'DICOMDIR'), path.join(programs.folder, 'LONGER'));
    run('dcmmkdir', '--append', '-Pgp', '+D', 'LONGER', mediaName(6));
    expect(read('LONGER').filter((line) => line.includes('IMAGE')).length).toBe(6);
  });
});
