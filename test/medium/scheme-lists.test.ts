import type { SchemeScreen } from '#libs/contracts/screens/board';
import type { SchemeTimes } from '#libs/contracts/readers';
import type { SchemeStudies } from '#libs/contracts/scheme-studies';
import { lead as leadOfDemo } from '#seed/practices';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { admit, goHome, image, judge, ownerSigns, sedate, takeView } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
let lead: Session;
beforeAll(async () => {
  server = await startServer();
  lead = await server.as(leadOfDemo.name);
  road = await Road.book(server, { dog: 'Gale', studies: [['hipLaxity', 'threnfold']] });
  await ownerSigns(road);
  await road.untilVisit();
  await admit(road);
  await sedate(road);
  await judge(road, await takeView(road, 'vdExtended'), 'retake', ['The pelvis lay turned.']);
  await image(road);
  await goHome(road);
}, 60_000);
afterAll(async () => { await server.close(); });

const list = (asked: string) => lead.read<SchemeStudies>(`/api/scheme/studies${asked}`);

it('each number of the scheme’s page opens a list of as many studies', async () => {
  const { steps } = await lead.read<SchemeScreen>('/api/scheme');
  expect(steps.length).toBeGreaterThan(0);
  for (const { code, at, count } of steps) expect((await list(`?protocol=${code}&step=${at}`)).rows).toHaveLength(count);
  const { rows, title } = await list('?protocol=hipLaxity&step=ready');
  expect(title).toBe('Hips, laxity: Films to send');
  expect(rows).toEqual([{ accession: road.screen.accession, study: 'Hips, laxity', step: 'Films to send', practice: 'Weirside Animal Practice', centre: 'Reading centre, Threnfold', since: road.today, dueDay: null }]);
});

it('studies that were imaged and not sent are listed, also as a file, and no owner or dog is named', async () => {
  const { imagedNotSent } = await lead.read<SchemeScreen>('/api/scheme');
  const unsent = await list('?show=unsent');
  expect([imagedNotSent, unsent.rows.map((r) => r.accession)]).toEqual([1, [road.screen.accession]]);
  const file = (await lead.bytes('/api/scheme/studies.csv?show=unsent')).toString('utf8');
  expect(file).toContain(`${road.screen.accession},"Hips, laxity",Films to send`);
  for (const said of [file, JSON.stringify(unsent)]) expect(said).not.toMatch(new RegExp(`${road.dog.person.name}|${road.dog.call}`));
});

it('films that were taken again are counted beside all that were judged', async () => {
  const { retakes } = await lead.read<SchemeTimes>('/api/scheme/times');
  expect(retakes).toEqual([{ study: 'Hips, laxity', films: 4, again: 1, mayBe: null, reasons: [] }]);
});

it('a page that is none is refused in words', async () => {
  expect((await lead.get('/api/scheme/studies?page=0')).status).toBe(400);
});
