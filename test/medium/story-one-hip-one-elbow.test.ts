import request from 'supertest';
import type { OwnerPage, CertificateCheck } from '#libs/contracts/screens/owner';
import { withAKill } from '#test/support/after-a-kill';
import { readPdf } from '#test/support/read-pdf';
import { bookAgain } from '#test/support/read-again';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { getRead, release } from '#test/support/study-legs';
import { admit, goHome, judge, ownerSigns, sedate, takeView } from '#test/support/visit-legs';
import type { Session } from '#test/support/session';

let server: RunningServer;
let road: Road;
let owner: Session;
const hips = () => road.study('hipExtended');
const elbows = () => road.study('elbow');
const AT_LEAST = 'at least grade E (right; the left hip could not be read)';
const INCOMPLETE = 'Incomplete: only the left elbow could be read, grade 1';
const NOT_READABLE = 'not readable: no picture of this joint could be taken';

/** Left hip not readable, right hip E, left elbow 1, the right one not imaged because the dog woke. */
beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Alder', studies: [['hipExtended', 'threnfold'], ['elbow', 'threnfold']], inDays: 1 });
  owner = await ownerSigns(road);
  await road.untilVisit();
  await admit(road);
  await sedate(road);
  await judge(road, await takeView(road, 'vdExtended'), 'accept');
  await judge(road, await takeView(road, 'mlFlexedLeft', 'jpeg'), 'accept');
  await road.act('nurse', 'stopImaging', road.visit.id, {});
  await goHome(road);
}, 60_000);
afterAll(async () => { await server.close(); });

it('asks only for the missing view again', async () => {
  expect(elbows().views.filter((v) => v.required && !v.accepted).map((v) => v.view)).toEqual(['mlFlexedRight']);
  expect(hips().views.filter((v) => v.required && !v.accepted)).toEqual([]);
  await road.act('desk', 'openVisit', road.id, { studies: [elbows().id], reason: 'missingViews' });
  await bookAgain(road, 7);
  const lines = road.visit.estimate!.lines.map((l) => l.words);
  expect(lines).toEqual(['Sedation, with monitoring', '1 radiograph', expect.stringContaining('Tax')]);
  expect(road.visit.estimate!.totalMinor).toBeLessThan(road.screen.visits[0]!.estimate!.totalMinor);
});

it('goes on without it when the owner does not want another sleep', async () => {
  await road.act('desk', 'cancelVisit', road.visit.id, { side: 'owner', why: 'The owner does not want another sleep.' });
  await road.act('vet', 'settleViews', elbows().id, { why: 'The owner does not want another sleep.' });
  expect(elbows().step).toBe('ready');
});

it('has no full result for either, in the words of the protocol', async () => {
  await getRead(road, hips().id, { ref: 'H-1', joints: [{ joint: 'left', reason: 'position' }, { joint: 'right', value: 'E', findings: { criteria: '2022' } }] });
  await getRead(road, elbows().id, { ref: 'E-1', joints: [{ joint: 'left', value: '1', findings: { primaryLesion: 'absent' } }, { joint: 'right', reason: 'notImaged' }] });
  await withAKill(road, async () => {
    await release(road, hips().id);
    await release(road, elbows().id);
  });
  expect(hips().results[0]!.dog).toBe(AT_LEAST);
  expect(elbows().results[0]!.dog).toBe(INCOMPLETE);
});

it('gives the same coded reasons on the page, in the file, on the paper, in the API and on the owner’s page', async () => {
  const letters = [await server.mail.wait(road.email, /a letter/), await server.mail.wait(road.email, /a letter/, 2)];
  await server.settled();
  await road.look();
  const papers = await Promise.all(letters.map(async (m) => (await readPdf(m.attachments[0]!.content)).text.replace(/\s+/g, ' ')));
  const csv = (await (await road.as('desk')).get('/api/orders/results.csv').expect(200)).text;
  const { results } = await owner.read<OwnerPage>('/api/owner');
  const checks = await Promise.all(road.screen.documents.filter((d) => d.kind === 'certificate').map(async (d) => (await request(server.url).get(`/api/certificates/${d.serial!}`).expect(200)).body as CertificateCheck));
  for (const words of [AT_LEAST, INCOMPLETE, NOT_READABLE]) {
    expect([words, papers.some((text) => text.includes(words))]).toEqual([words, true]);
    expect([words, csv.includes(words)]).toEqual([words, true]);
    expect([words, JSON.stringify(results).includes(words)]).toEqual([words, true]);
    expect([words, JSON.stringify(checks).includes(words)]).toEqual([words, true]);
    expect([words, JSON.stringify(road.screen.studies).includes(words)]).toEqual([words, true]);
  }
  expect(csv).not.toMatch(/,[-–—]?,[-–—]?,[-–—]?,/);
});

it('has no standing', async () => {
  for (const check of [hips(), elbows()]) expect(check.results[0]!.dog).toMatch(/^at least|^Incomplete/);
  const { results } = await owner.read<OwnerPage>('/api/owner');
  expect([hips(), elbows(), ...results].map((r) => r.standing?.line ?? null)).toEqual([null, null, null, null]);
  const rows = await server.look((tx) => tx.countingRow.findMany({ where: { dogId: road.dog.id, state: 'counted' } }));
  expect(rows).toEqual([]);
  expect(JSON.stringify(road.screen)).not.toMatch(/percentile|rank/i);
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
