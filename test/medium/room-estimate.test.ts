import type { OwnerPage } from '#libs/contracts/screens/owner';
import { findProtocol, installStudies } from '#libs/science/protocols/catalogue';
import { dicomFile, pixels16 } from './files-support/dicom-file.js';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { accept, dispatch } from '#test/support/study-legs';
import { admit, goHome, judge, ownerSigns, sedate, takeView } from '#test/support/visit-legs';
import type { Session } from '#test/support/session';

interface Mark { kind: string; side?: 'left' | 'right'; points: { x: number; y: number }[] }
const around = (x: number, y: number, r: number) => [20, 80, 140, 200, 260, 320].map((d) => (d * Math.PI) / 180).map((a) => ({ x: x + r * Math.cos(a), y: y + r * Math.sin(a) }));
/** An index of 0.213 left and 0.617 right, in a test film of 240 × 320 pixels. */
const [LEFT, RIGHT] = [0.213, 0.617];
const marks: Mark[] = [
  { kind: 'head', side: 'left', points: around(180 + 30 * LEFT, 160, 30) }, { kind: 'socket', side: 'left', points: around(180, 160, 33) },
  { kind: 'head', side: 'right', points: around(60 - 30 * RIGHT, 160, 30) }, { kind: 'socket', side: 'right', points: around(60, 160, 33) },
];
const secrets = /0\.21|0\.62|0\.61|0\.20 |roomMark|room_mark|"marks"|210\.|217\.3/;

let server: RunningServer;
/** Invented: a second study that is read from the same film. */
const loaded = structuredClone(findProtocol('hipLoaded', '1')!);
const distraction = findProtocol('hipLaxity', '2')!.views.find((v) => v.code === 'vdDistraction')!;
const ownStudy = { ...loaded, code: 'ownStress', name: 'Own stress study (invented)', deskName: 'Hips, own', views: [distraction], equipment: ['xray', 'distractionDevice'], needsAccreditation: false, youngest: { days: 112 } };

beforeAll(async () => {
  installStudies([ownStudy]);
  server = await startServer();
  await server.look((tx) => tx.centre.update({ where: { id: server.scheme.centres.threnfold.id }, data: { protocols: { push: 'ownStress' } } }));
}, 60_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

const rows = (order: string) => server.look((tx) => tx.roomMark.findMany({ where: { orderId: order }, orderBy: { at: 'asc' } }));

async function asleep(dog: string, studies: [string, 'threnfold'][]): Promise<{ road: Road; owner: Session }> {
  const road = await Road.book(server, { dog, studies, inDays: 1 });
  const owner = await ownerSigns(road);
  await road.untilVisit();
  await admit(road);
  await sedate(road);
  return { road, owner };
}

describe('points set on a film in the room', () => {
  let road: Road;
  let owner: Session;
  let film: string;
  let reader: Awaited<ReturnType<typeof dispatch>>;
  const everyPage = async () => {
    const orders = await Promise.all((['desk', 'nurse', 'operator', 'vet', 'manager'] as const).map(async (who) => (await road.as(who)).read(`/api/orders/${road.id}`)));
    return JSON.stringify([orders, await owner.read<OwnerPage>('/api/owner'), server.mail.to(road.email).map((m) => m.text)]);
  };

  beforeAll(async () => {
    ({ road, owner } = await asleep('Gale', [['hipLaxity', 'threnfold']]));
    for (const view of ['vdExtended', 'vdCompression']) await judge(road, await takeView(road, view), 'accept');
    film = await takeView(road, 'vdDistraction');
    const { road: other } = await asleep('Bracken', [['hipLaxity', 'threnfold']]);
    await takeView(other, 'vdExtended');
  }, 60_000);

  it('are kept with the film and who set them, each time beside the last', async () => {
    await road.act('operator', 'markFilm', road.visit.id, { exposure: film, marks: marks.slice(0, 2) });
    await road.act('vet', 'markFilm', road.visit.id, { exposure: film, marks });
    const kept = await rows(road.id);
    expect(kept.map((r) => [r.exposure, (r.marks as unknown[]).length, r.byName])).toEqual([[film, 2, road.slot.operator.name], [film, 4, road.slot.vet.name]]);
    expect(kept[1]).toMatchObject({ picture: { width: 240, height: 320 }, marks });
    expect(road.screen.exposures.find((e) => e.id === film)!.marked.map((m) => m.by)).toEqual([road.slot.operator.name, road.slot.vet.name]);
  });

  const saved = async (who: 'operator' | 'vet' | 'nurse' | 'desk' | 'manager', exposure = film, order = road.id) => (await road.as(who)).get(`/api/orders/${order}/exposures/${exposure}/marks`);

  it('are read back by those who may set some, the newest, with who set them and when', async () => {
    for (const who of ['operator', 'vet'] as const) {
      const { status, body } = await saved(who);
      expect([status, body]).toEqual([200, { saved: { marks, by: road.slot.vet.name, at: (await rows(road.id))[1]!.at.toISOString() } }]);
    }
    expect(await server.look((tx) => tx.audit.count({ where: { orderId: road.id, action: 'readMarks', subject: film } }))).toBe(2);
  });

  it.each(['nurse', 'desk', 'manager'] as const)('are not read back by the %s', async (who) => {
    const refused = await saved(who);
    expect([refused.status, refused.body]).toMatchObject([403, { code: 'NOT_YOUR_ROLE' }]);
    expect(refused.text).not.toMatch(secrets);
  });

  it('are none on a film that nobody has set any on, and nothing is found of a film of another order', async () => {
    const unmarked = road.screen.exposures.find((e) => e.view === 'vdExtended')!.id;
    expect((await saved('operator', unmarked)).body).toEqual({ saved: null });
    const taken = await server.look((tx) => tx.fact.findFirstOrThrow({ where: { type: 'exposureTaken', orderId: { not: road.id } } }));
    expect((await saved('operator', (taken.body as { exposure: string }).exposure)).status).toBe(404);
    expect((await saved('operator', 'none')).status).toBe(404);
  });

  it('do not stand in the way of a verdict on the film as it was looked at', async () => {
    const { version } = road.screen;
    await road.act('operator', 'markFilm', road.visit.id, { exposure: film, marks });
    expect((await road.attempt('operator', 'judgeView', road.study().id, { exposure: film, verdict: 'accept', reasons: [] }, { version })).status).toBe(200);
  });

  it.each<[string, Mark[], RegExp]>([
    ['outside the picture', [{ kind: 'head', side: 'left', points: [...around(180, 160, 30), { x: 241, y: 3 }] }], /Head, left: point 7 at 241, 3 lies outside the picture of 240 × 320/],
    ['on one line', [{ kind: 'head', side: 'left', points: [1, 2, 3].map((n) => ({ x: n, y: n })) }], /one straight line/],
    ['too few', [{ kind: 'head', side: 'left', points: [{ x: 1, y: 1 }] }], /needs 3 to 24 points and has 1/],
    ['of another view', [{ kind: 'femur', side: 'left', points: [{ x: 1, y: 1 }, { x: 2, y: 2 }] }], /not marked on this view/],
    ['without a place', [{ kind: 'midline', points: [{ x: NaN, y: 1 }, { x: 2, y: Infinity }] }], /has no place/],
    ['with left and right exchanged', marks.map((m) => ({ ...m, side: m.side === 'left' ? 'right' : 'left' })), /the picture is mirrored/],
    ['none at all', [], /Nothing is marked/],
  ])('%s are refused in words, and nothing is kept', async (_, wrong, words) => {
    const before = (await rows(road.id)).length;
    const refused = await road.attempt('operator', 'markFilm', road.visit.id, { exposure: film, marks: wrong });
    expect(refused.status).toBe(400);
    expect(JSON.stringify(refused.body)).toMatch(words);
    expect(await rows(road.id)).toHaveLength(before);
  });

  it.each(['markFilm', 'assignFilm', 'disownFilm', 'logRoom', 'judgeView'])('%s touches no film of another order', async (action) => {
    const taken = await server.look((tx) => tx.fact.findFirstOrThrow({ where: { type: 'exposureTaken', orderId: { not: road.id } } }));
    const { exposure } = taken.body as { exposure: string };
    const { version } = await road.look();
    const [study, people] = [road.study().id, [road.slot.operator.id]];
    const on = action === 'judgeView' ? study : road.visit.id;
    const refused = await road.attempt('operator', action as 'markFilm', on, { exposure, marks, serves: [study], reason: 'testFilm', people, verdict: 'accept' } as never, { version });
    expect([refused.status, JSON.stringify(refused.body)]).toEqual([400, expect.stringContaining('no such film')]);
    expect((await road.look()).version).toBe(version);
  });

  it('are not the desk’s to set', async () => {
    expect((await road.attempt('desk', 'markFilm', road.visit.id, { exposure: film, marks })).status).toBe(403);
  });

  it('give nobody an estimate before the package is sealed, on no page and in no mail', async () => {
    await road.look();
    await road.act('operator', 'judgeView', road.study().id, { exposure: film, verdict: 'accept', reasons: [] });
    await road.act('operator', 'endImaging', road.visit.id, {});
    await goHome(road);
    expect(await everyPage()).not.toMatch(secrets);
  });

  it('stay in the room once the dog has woken: nobody reads them back', async () => {
    for (const who of ['operator', 'vet', 'nurse', 'desk', 'manager'] as const) {
      const refused = await saved(who);
      expect([who, [403, 422].includes(refused.status), secrets.test(refused.text)]).toEqual([who, true, false]);
    }
    expect((await owner.get(`/api/orders/${road.id}/exposures/${film}/marks`)).status).toBe(404);
  });

  it('are held against the reading, whose sides look exchanged; only the vet sees numbers', async () => {
    reader = await dispatch(road, road.study().id);
    expect(JSON.stringify(reader.screen)).not.toMatch(secrets);
    const asked = await reader.session.get(`/api/orders/${road.id}/exposures/${film}/marks`);
    expect([asked.status, secrets.test(asked.text)]).toEqual([404, false]);
    await reader.acknowledge();
    await reader.reads({ joints: [{ joint: 'left', value: 0.6 }, { joint: 'right', value: 0.22 }] });
    expect(JSON.stringify(reader.screen)).not.toMatch(/exchanged|room/);
    const seenBy = async (who: 'vet' | 'desk') => (await road.look(who)).studies[0]!.results[0]!;
    const [vet, desk] = [await seenBy('vet'), await seenBy('desk')];
    expect(vet.problems).toEqual(['Left and right look exchanged against the room estimate. Ask the reader before accepting.']);
    expect(vet.room).toMatch(/^Measured in the room: left may be 0\.\d\d to 0\.\d\d, right 0\.\d\d to 0\.\d\d\./);
    expect(desk.room).toBeNull();
    expect(JSON.stringify([await (await road.as('desk')).read(`/api/orders/${road.id}`), await owner.read('/api/owner')])).not.toMatch(/Measured in the room/);
    expect(road.screen.holds.map((h) => h.code)).toContain('RESULT_TO_EXPLAIN');
  });
});

describe('a film that two studies share', () => {
  it('keeps its estimate in the room until the second of them is sealed', async () => {
    const { road } = await asleep('Wenna', [['hipLaxity', 'threnfold'], ['ownStress', 'threnfold']]);
    const study = road.study('hipLaxity').id;
    const laxity = () => road.study('hipLaxity');
    for (const view of ['vdExtended', 'vdCompression', 'vdDistraction']) {
      const taken = await takeView(road, view);
      if (view === 'vdDistraction') await road.act('operator', 'markFilm', road.visit.id, { exposure: taken, marks });
      await judge(road, taken, 'accept');
    }
    await road.act('operator', 'endImaging', road.visit.id, {});
    await goHome(road);
    const reader = await dispatch(road, study);
    await reader.acknowledge();
    await reader.reads({ joints: [{ joint: 'left', value: 0.21 }, { joint: 'right', value: 0.26 }] });
    await road.look('vet');
    expect(laxity().results[0]).toMatchObject({ room: null, problems: [] });
    await road.act('desk', 'seal', road.study('ownStress').id, {});
    await road.look('vet');
    expect(laxity().results[0]!.room).toContain('far from the room estimate, and a digit may have slipped. Ask the reader before accepting. 0.62 would fit.');
    expect(JSON.stringify(await road.look('desk'))).not.toContain('would fit');
    await accept(road, study);
    await road.act('vet', 'releaseLetter', study, {});
    const letter = await readPdf((await server.mail.wait(road.email, /a letter/)).attachments[0]!.content);
    expect(letter.text).not.toMatch(/room|0\.62/);
  });
});

it('a film whose file says that its pixels have no size is kept, and nothing is measured on it', async () => {
  const { road } = await asleep('Heron', [['hipLaxity', 'threnfold']]);
  const operator = await road.as('operator');
  const content = dicomFile({ rows: 2, columns: 3, pixels: pixels16(0, 1000, 2000, 3000, 4000, 4095), more: [[0x0028, 0x0030, 'DS', '0\\0']] });
  const { body } = await operator.upload(`/api/orders/${road.id}/images`, content, 'film.dcm').expect(201);
  await road.act('operator', 'takeView', road.study().id, { view: 'vdDistraction', serves: [road.study().id], image: (body as { image: string }).image, marker: 'L', people: [road.slot.operator.id], technique: {} });
  const taken = road.screen.exposures.at(-1)!;
  expect(taken.picture).toEqual({ width: 3, height: 2, spacing: { row: 0, column: 0 } });
  const refused = await road.attempt('operator', 'markFilm', road.visit.id, { exposure: taken.id, marks: [{ kind: 'midline', points: [{ x: 1, y: 1 }, { x: 1, y: 2 }] }] });
  expect(JSON.stringify(refused.body)).toContain('its pixels are 0 × 0 mm, which cannot be');
  expect(await rows(road.id)).toEqual([]);
});
