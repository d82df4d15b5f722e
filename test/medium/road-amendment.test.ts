import request from 'supertest';
import type { CapturedMail } from '#libs/platform/mail/capture-server';
import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { readPdf } from '#test/support/read-pdf';
import { printedHips } from '#test/support/printed';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { accept, getRead, release, type AtReader } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
let reader: AtReader;
let letters: CapturedMail[];
const pageOf = async (serial: string) => (await request(server.url).get(`/api/certificates/${serial}`).expect(200)).body as CertificateCheck;
const certificates = () => road.screen.documents.filter((d) => d.kind === 'certificate').sort((a, b) => a.at.localeCompare(b.at));

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Hazel', studies: [['hipLaxity', 'threnfold']] });
  await throughTheVisit(road);
  reader = await getRead(road, road.study().id, { ref: 'T-77' });
  await release(road, road.study().id);
  await server.mail.wait(road.email, /a letter/);
  await server.settled();
  server.clock.advance({ days: 3 });
}, 60_000);
afterAll(async () => { await server.close(); });

it('a second reading under the same number waits for the vet, and the first stands until then', async () => {
  await reader.reads({ ref: 'T-77', joints: [{ joint: 'left', value: 0.38 }, { joint: 'right', value: 0.58 }], comment: 'The right hip measured anew.' });
  await road.look('vet');
  expect(road.study()).toMatchObject({ step: 'answered', results: [{ state: 'accepted' }, { state: 'waiting', ref: 'T-77' }] });
  expect(await pageOf(certificates()[0]!.serial!)).toMatchObject({ state: 'valid', replacedBy: null });
});

it('brings a new letter that says which one it replaces and why', async () => {
  await accept(road, road.study().id);
  await road.act('vet', 'releaseLetter', road.study().id, {});
  letters = [await server.mail.wait(road.email, /a letter/), await server.mail.wait(road.email, /a letter/, 2)];
  await server.settled();
  await road.look();
  const { text } = await readPdf(letters[1]!.attachments[0]!.content);
  expect(text).toContain('Why a new letter');
  expect(text).toContain('This letter replaces the one of');
  expect(text).toContain('The centre has sent a new reading of the same pictures.');
  expect(text).toContain(`The certificate ${certificates()[0]!.serial!} no longer stands.`);
  expect(text).toContain('0.58');
});

it('turns the first certificate’s page to "amended", with the serial of the new one, which is valid', async () => {
  const [first, second] = certificates();
  const [before, now] = [await pageOf(first!.serial!), await pageOf(second!.serial!)];
  expect([before.state, before.replacedBy, printedHips(before)]).toEqual(['amended', second!.serial, ['0.38', '0.44']]);
  expect([now.state, now.replacedBy, printedHips(now)]).toEqual(['valid', null, ['0.38', '0.58']]);
});

it('changes no byte of the papers that were sent first', async () => {
  const desk = await road.as('desk');
  const kept = (id: string) => desk.bytes(`/api/orders/${road.id}/documents/${id}`);
  const sent = letters[0]!.attachments.map((a) => a.content);
  const first = certificates()[0]!;
  const letter = road.screen.documents.filter((d) => d.kind === 'letter').sort((a, b) => a.at.localeCompare(b.at))[0]!;
  expect((await kept(letter.id)).equals(sent[0]!)).toBe(true);
  expect((await kept(first.id)).equals(sent[1]!)).toBe(true);
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
