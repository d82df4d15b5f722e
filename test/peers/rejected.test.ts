import { POOR, REJECTIONS, rejectionNote, type RejectionNote } from '#libs/dicom/rejection-note';
import { newUid, sopClasses } from '#libs/dicom/uids';
import { describeWithPeer } from '#test/support/peers';
import { DicomPrograms } from './support/dicom-programs.js';

const film = (seriesUid: string) => ({ sopClassUid: sopClasses.dxForPresentation, sopInstanceUid: newUid(), seriesUid });
const [one, other] = [newUid(), newUid()];
const note = (more: Partial<RejectionNote>): RejectionNote => ({
  why: 'quality', films: [film(one), film(one), film(other)], studyUid: newUid(), sopInstanceUid: newUid(), seriesUid: newUid(), number: 'P-1A2B3C4D',
  dog: { number: 'D-000123', sex: 'female', neutered: false, breed: 'Karsby Spitz' }, imagedOn: '2026-11-29', day: '2026-11-30', time: '10:11:12', ...more,
});

describeWithPeer('dciodvfy', 'a note that rejects films', () => {
  let programs: DicomPrograms;
  beforeAll(() => { programs = new DicomPrograms(); });
  afterAll(() => programs.close());

  it.each(Object.keys(REJECTIONS) as (keyof typeof REJECTIONS)[])('because of %s is a valid object', (why) => {
    expect(programs.verify(rejectionNote(note({ why, words: 'This film is of another dog – Žížala’s.' })))).toEqual({ kind: 'KeyObjectSelectionDocument', errors: [] });
  });

  it.each(Object.keys(POOR) as (keyof typeof POOR)[])('for its quality, which is %s, is a valid object', (poor) => {
    expect(programs.verify(rejectionNote(note({ poor })))).toEqual({ kind: 'KeyObjectSelectionDocument', errors: [] });
  });

  it('is read by dcmtk as a key object document with its title and every film', () => {
    const films = [film(one), film(other)];
    const read = programs.read('dsrdump', ['+Pu'], rejectionNote(note({ why: 'safety', films })));
    expect(read).toContain('Rejected for Patient Safety Reasons');
    for (const { sopInstanceUid } of films) expect(read).toContain(sopInstanceUid);
  });

  it('of no film is not written', () => expect(() => rejectionNote(note({ films: [] }))).toThrow('at least one film'));
});
