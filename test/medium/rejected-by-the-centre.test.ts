import { addDays } from '#libs/pathway/days';
import { readPdf } from '#test/support/read-pdf';
import { bookAgain } from '#test/support/read-again';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { dispatch } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
const views = ['mlFlexedRight'];

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Rill', studies: [['elbow', 'threnfold']], inDays: 1 });
  await throughTheVisit(road);
  const reader = await dispatch(road, road.study().id);
  await reader.session.send(`${reader.path}/reject`, { views, reasons: ['The right elbow lay turned.'] });
  await road.look();
}, 60_000);
afterAll(async () => { await server.close(); });

it('keeps the old films with the rejection that named them', () => {
  const [film] = road.screen.exposures.filter((e) => e.view === 'mlFlexedRight');
  expect(road.study().rejections).toMatchObject([{ views: ['Elbow, right, bent'], reasons: ['The right elbow lay turned.'], exposures: [film!.id] }]);
  expect(road.study().rejections[0]!.package).toMatch(/^P-/);
});

it('is told in a letter that a vet releases, without blame, with what comes next and what it costs', async () => {
  const input = { cost: 'You pay nothing for the new pictures.' };
  expect((await road.attempt('desk', 'releaseFilmsRejected', road.study().id, input)).body).toMatchObject({ code: 'NOT_YOUR_ROLE' });
  expect((await road.attempt('vet', 'releaseFilmsRejected', road.study().id, { cost: '' })).body).toMatchObject({ code: 'BAD_INPUT' });
  await road.act('vet', 'releaseFilmsRejected', road.study().id, input);
  const mail = await server.mail.wait(road.email, /^Rill: some pictures again/);
  const { text } = await readPdf(mail.attachments[0]!.content);
  for (const words of ['need another try', 'Reading centre, Threnfold', 'The right elbow lay turned', 'nobody’s fault', 'You pay nothing for the new pictures.', 'The pictures that were taken are kept.']) expect(text.replace(/\s+/g, ' ')).toContain(words);
  expect(text).not.toMatch(/mistake|error of|failed|Sef|operator/i);
  expect((await road.attempt('vet', 'releaseFilmsRejected', road.study().id, input)).body).toMatchObject({ code: 'NOT_AT_THIS_STEP' });
});

it('is planned again only when somebody is named to pay', async () => {
  const plan = { studies: [road.study().id], reason: 'rejected' as const };
  expect((await road.attempt('desk', 'openVisit', road.id, plan)).body).toMatchObject({ code: 'BAD_INPUT', fields: [{ path: 'payer' }] });
  await road.act('vet', 'openVisit', road.id, { ...plan, payer: road.dog.person.id, restUntil: addDays(road.today, 14) });
  expect(road.screen.payer).toBe(road.dog.person.name);
});

it('is not booked before the vet’s rest days are over', async () => {
  await expect(bookAgain(road, 7)).rejects.toThrow(/NOT_ELIGIBLE.*REST_DAYS/s);
  await road.look();
  expect(road.visit.day).toBeNull();
});

it('asks for examination, weight, consents, answers and an estimate for the missing view alone', async () => {
  await bookAgain(road, 15);
  expect(road.screen.holds.map((h) => h.code)).toEqual(expect.arrayContaining(['CONSENT_SEDATION_MISSING', 'ESTIMATE_NOT_ACCEPTED', 'ANSWERS_MISSING']));
  expect(road.visit).toMatchObject({ admitted: null, examined: null, consent: null });
  expect(road.visit.estimate!.lines.map((l) => l.words)).toEqual(['Sedation, with monitoring', '1 radiograph', 'Sending', expect.stringContaining('Tax')]);
});

it('says the visit to the dog’s owner, though somebody else gets the result', async () => {
  const before = server.mail.to(road.email).filter((m) => /: visit on /.test(m.subject)).length;
  const desk = await road.as('desk');
  const { body } = await desk.post('/api/people', { name: 'Anno Perl', email: 'anno@perl.example', channel: 'mail' }).expect(201);
  await road.act('desk', 'confirmAddressees', road.id, { people: [(body as { id: string }).id] });
  await bookAgain(road, 22);
  await server.mail.wait(road.email, /^Rill: visit on /, before + 1);
  await server.settled();
  expect(server.mail.to('anno@perl.example')).toEqual([]);
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
