import { createHash } from 'node:crypto';
import type { CapturedMail } from '#libs/platform/mail/capture-server';
import { readPdf } from '#test/support/read-pdf';
import { readDataSet } from '#libs/dicom/read-data-set';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { dispatch, getRead, release } from '#test/support/study-legs';
import { unzip } from '#test/support/unzip';
import { admit, goHome, image, judge, ownerSigns, sedate, takeView } from '#test/support/visit-legs';

let server: RunningServer;
beforeAll(async () => { server = await startServer(); }, 60_000);
afterAll(async () => { await server.close(); });

async function asleep(wanted: Parameters<typeof Road.book>[1]): Promise<Road> {
  const road = await Road.book(server, wanted);
  await ownerSigns(road);
  await road.untilVisit();
  await admit(road);
  await sedate(road);
  return road;
}

const letterOf = async (mail: CapturedMail) => (await readPdf(mail.attachments[0]!.content)).text;

describe('a film that is taken again', () => {
  let road: Road;
  beforeAll(async () => { road = await asleep({ dog: 'Gale', studies: [['hipLaxity', 'threnfold']] }); });

  it('needs a reason', async () => {
    const first = await takeView(road, 'vdExtended', 'dicom');
    const refused = await road.attempt('operator', 'judgeView', road.study().id, { exposure: first, verdict: 'retake', reasons: [] });
    expect(refused.status).toBe(400);
    expect(refused.body).toMatchObject({ code: 'BAD_INPUT', fields: [{ path: 'reasons', message: 'Say why the view is to be taken again.' }] });
    await judge(road, first, 'retake', ['The pelvis lay turned.']);
    expect(road.study().views.find((v) => v.view === 'vdExtended')).toMatchObject({ accepted: false });
  });

  it('goes to the reader beside the one that was accepted', async () => {
    await image(road);
    await goHome(road);
    expect(road.screen.exposures.filter((e) => e.view === 'vdExtended').map((e) => [e.attempt, e.verdicts[0]!.verdict])).toEqual([[1, 'retake'], [2, 'accept']]);
    const reader = await dispatch(road, road.study().id);
    expect(reader.screen.images.map((i) => [i.view, i.attempt, i.accepted])).toEqual([['vdExtended', 1, false], ['vdExtended', 2, true], ['vdCompression', 1, true], ['vdDistraction', 1, true]]);
    const files = await unzip(await reader.session.bytes(`${reader.path}/zip`));
    expect([...files.keys()].filter((name) => name.includes('vdExtended'))).toHaveLength(2);
    const { films } = JSON.parse(files.get('manifest.json')!.toString()) as { films: { file: string; sha256: string; sealed: string }[] };
    for (const { file, sha256 } of films) expect(createHash('sha256').update(files.get(file)!).digest('hex')).toBe(sha256);
    // The machine wrote whose dog it is into its film; only that one was changed on its way out.
    expect(films.map(({ sha256, sealed }) => sha256 === sealed)).toEqual([false, true, true, true]);
    const [machine] = films;
    expect(readDataSet(files.get(machine!.file)!).elements).toHaveProperty('x00120064');
    for (const word of ['Ownername', 'Calledname', 'OURNUMBER']) expect(files.get(machine!.file)!.includes(word)).toBe(false);
  });
});

describe('imaging that is stopped while a view is missing', () => {
  let road: Road;
  beforeAll(async () => {
    road = await asleep({ dog: 'Wenna', studies: [['elbow', 'threnfold']] });
    await judge(road, await takeView(road, 'mlFlexedLeft', 'jpeg'), 'accept');
  });

  it('takes one touch of anybody, and no reason', async () => {
    await road.act('nurse', 'stopImaging', road.visit.id, {});
    expect(road.visit.step).toBe('imaged');
    await goHome(road);
    expect(road.visit.step).toBe('home');
    expect(road.study().step).toBe('imaging');
    expect(road.screen.holds.map((h) => h.code)).toContain('VIEWS_MISSING');
  });

  it('sends nothing until a person has said why it goes on without the view', async () => {
    const refused = await road.attempt('desk', 'seal', road.study().id, {});
    expect(refused.status).toBe(422);
    await road.act('vet', 'settleViews', road.study().id, { why: 'The dog woke early and should not sleep again.' });
    expect(road.study().step).toBe('ready');
  });

  it('is told in the letter with that reason, and the joint without a picture with its own', async () => {
    const reader = await getRead(road, road.study().id, { joints: [{ joint: 'left', value: '0', findings: { primaryLesion: 'absent' } }, { joint: 'right', reason: 'notImaged' }] });
    expect(reader.screen.remarks).toEqual(['Sent with views missing: The dog woke early and should not sleep again.']);
    await release(road, road.study().id);
    const text = await letterOf(await server.mail.wait(road.email, /a letter/));
    expect(text).toContain('The dog woke early and should not sleep again.');
    expect(text).toContain('no picture of this joint could be taken');
    expect(text).toContain('no signs of arthrosis');
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
