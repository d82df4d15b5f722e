import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { installOwnStudies } from '#libs/platform/settings/own-studies';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { dispatch, release } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

/** Invented: a reader gives each hip a whole number from 0 to 53. */
const row = {
  ...structuredClone(findProtocol('hipExtended', '1')!),
  code: 'ownHips', version: '1', invented: true, name: 'Aldra hip numbers (invented)', deskName: 'Hips, Aldra numbers',
  value: { kind: 'number', name: 'joint number', unit: '', decimals: 0, min: 0, max: 53, rangeReason: 'The sheet of this study goes from 0 to 53.' },
  findings: [], olderBreeds: [], consentText: 'own-1',
  dog: { worse: 'higher', worseWords: 'the hip with the higher number', oneJoint: 'incomplete' },
  repeatability: { known: false, reason: 'Nobody has measured yet how far two readings of the same film differ in this study.' },
  sources: [{ what: 'The whole study', citation: 'invented for a test, no source' }],
};

let server: RunningServer;
let folder: string;
beforeAll(async () => {
  server = await startServer();
  folder = await mkdtemp(path.join(tmpdir(), 'own-study-'));
}, 60_000);
afterAll(async () => {
  await server.close();
  await rm(folder, { recursive: true, force: true });
});
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

const install = async (rows: unknown) => {
  const file = path.join(folder, 'studies.json');
  await writeFile(file, typeof rows === 'string' ? rows : JSON.stringify(rows));
  installOwnStudies(file);
};

it('stops the start with a sentence when its file cannot be meant', async () => {
  await expect(install('[{')).rejects.toThrow(/^STUDIES_FILE: .*studies\.json: /);
  await expect(install([{ ...row, joints: [] }])).rejects.toThrow(/Study "ownHips": joints: .*Correct the row/);
  expect(() => installOwnStudies(path.join(folder, 'nowhere.json'))).toThrow(/nowhere\.json: ENOENT/);
  expect(findProtocol('ownHips', '1')).toBeUndefined();
});

describe('a scheme’s own study, from its row to the letter', () => {
  let road: Road;
  let reader: Awaited<ReturnType<typeof dispatch>>;
  beforeAll(async () => {
    await install([row]);
    const { id } = server.scheme.centres.threnfold;
    await server.look((tx) => tx.centre.update({ where: { id }, data: { protocols: { push: 'ownHips' } } }));
    road = await Road.book(server, { dog: 'Nettle', studies: [['ownHips', 'threnfold']], inDays: 1 });
    await throughTheVisit(road);
    reader = await dispatch(road, road.study().id);
    await reader.acknowledge();
  }, 60_000);

  it('refuses a number that its sheet does not have, and stores nothing', async () => {
    for (const value of [54, -1, 3.5]) {
      const refused = await reader.session.post(`${reader.path}/result`, { joints: [{ joint: 'left', value }, { joint: 'right', value: 4 }], signedBy: 'Noemi Haskel' });
      expect(refused.status).toBe(400);
    }
    expect((await road.look('vet')).studies[0]!.results).toEqual([]);
  });

  it('tells both numbers and the higher one in the letter, and never a sum', async () => {
    await reader.reads({ joints: [{ joint: 'left', value: 7 }, { joint: 'right', value: 12 }] });
    await road.look('vet');
    await release(road, road.study().id);
    const { text } = await readPdf((await server.mail.wait(road.email, /a letter/)).attachments[0]!.content);
    expect(text).toContain('Aldra hip numbers');
    expect(text).toMatch(/\b7\b/);
    expect(text).toContain('12 (right, the hip with the higher number)');
    expect(text).not.toMatch(/\b19\b/);
  });
});
