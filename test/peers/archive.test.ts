import { Readable } from 'node:stream';
import { deIdentify } from '#libs/dicom/de-identify';
import { rejectionNote } from '#libs/dicom/rejection-note';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { Outgoing } from '#libs/platform/outgoing/outgoing';
import type { Channel, Item } from '#libs/steps/dispatch/channels/channel';
import { dicomweb } from '#libs/steps/dispatch/channels/dicomweb';
import { describeWithPeer } from '#test/support/peers';
import { aRadiograph } from './support/a-film.js';
import { Archive } from './support/archive.js';

const told = { key: 'k', number: 'P-1A2B3C4D', film: 'a'.repeat(64), dog: { number: 'D-1', sex: 'male', neutered: true, breed: 'Karsby Spitz' } } as const;
const signal = new AbortController().signal;

function item(content: Buffer, named: Pick<Item, 'sopClass' | 'sopUid' | 'studyUid'>): Item {
  return { ...named, name: 'a film', file: '01.dcm', sha256: '', size: content.length, open: () => Promise.resolve(Readable.from([content])) };
}

describeWithPeer('Orthanc', 'an archive of other people that speaks DICOMweb', (program) => {
  let archive: Archive;
  let channel: Channel;
  let outgoing: Outgoing;
  beforeAll(async () => {
    archive = await Archive.open(program);
    outgoing = new Outgoing({ outgoing: { allow: [archive.host] } });
    channel = dicomweb(outgoing, archive.channel);
  }, 60_000);
  afterAll(async () => {
    await archive.close();
    await outgoing.close();
  });

  it('takes a film, says then that it has it, and takes it again without another one', async () => {
    const copy = deIdentify(writeRadiograph(aRadiograph()), told);
    const film = item(Buffer.concat(copy.content), { sopClass: copy.sopClassUid, sopUid: copy.sopInstanceUid, studyUid: copy.studyUid });
    expect(await channel.has(film, signal)).toBe(false);
    await channel.put(film, signal);
    expect(await channel.has(film, signal)).toBe(true);
    await channel.put(film, signal);
    expect(await channel.has(film, signal)).toBe(true);
  });

  it('takes the note that rejects a film', async () => {
    const copy = deIdentify(writeRadiograph(aRadiograph()), told);
    const named = { sopUid: '2.25.77', studyUid: copy.studyUid };
    const note = rejectionNote({ ...told, why: 'wrongOrder', words: 'This film is of another dog.', films: [copy], studyUid: copy.studyUid, sopInstanceUid: named.sopUid, seriesUid: '2.25.78', imagedOn: '2026-11-29', day: '2026-11-30', time: '10:11:12' });
    const sent = item(note, { sopClass: '1.2.840.10008.5.1.4.1.1.88.59', ...named });
    await channel.put(sent, signal);
    expect(await channel.has(sent, signal)).toBe(true);
  });

  it('refuses what is no image', async () => {
    const garbage = item(Buffer.from('no image at all'), { sopClass: '1.2', sopUid: '2.25.99', studyUid: '2.25.98' });
    await expect(channel.put(garbage, signal)).rejects.toThrow(/refuses it/);
    expect(await channel.has(garbage, signal)).toBe(false);
  });
});
