import type { OrderScreen } from '#libs/contracts/screens/order';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { openLink, type Session } from '#test/support/session';
import { dispatch, readings, type AtReader } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
let seller: Session;
let buyer: Session;
let reader: AtReader;

const BUYER = 'wick@riverbend.example';
const page = (who: Session) => who.read<OwnerPage>('/api/owner');
const codes = () => road.screen.holds.map((h) => h.code);

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
  seller = await throughTheVisit(road);
  reader = await dispatch(road, road.study().id);
}, 90_000);
afterAll(async () => { await server.close(); });

describe('a dog that is sold while its films are with the reader', () => {
  it('is not sold on a day to come', async () => {
    const answer = await road.attempt('desk', 'recordTransfer', road.id, { day: '2199-01-01', buyerName: 'Oda Wick' });
    expect([answer.status, (answer.body as { message: string }).message]).toEqual([400, expect.stringMatching(/still to come/)]);
  });

  it('brings a mail to either side, and the order waits for both', async () => {
    await road.act('desk', 'recordTransfer', road.id, { day: road.today, buyerName: 'Oda Wick', buyerEmail: BUYER });
    expect(codes()).toEqual(expect.arrayContaining(['TRANSFER_NOT_AGREED', 'ADDRESSEE_TO_CONFIRM']));
    buyer = await openLink(server.url, await server.mail.wait(BUYER, /Alder: your page/));
    const asked = await server.mail.wait(road.email, /Alder: a new owner/);
    expect(asked.text).toContain('Nothing about you is shown to them.');
  });

  it('shows the buyer nothing until both have said yes', async () => {
    const seen = await page(buyer);
    expect(seen).toMatchObject({ transfer: { party: 'buyer', said: false, agreed: false }, results: [], documents: [], visit: null, estimate: null, questions: [], knots: [] });
    expect(JSON.stringify(seen)).not.toMatch(new RegExp([road.dog.person.name, road.dog.person.phone, road.dog.transponder].join('|')));
    expect((await buyer.post('/api/owner/withdraw', { purpose: 'study', subject: road.study().id })).status).toBe(422);
  });

  it('takes each side’s yes from itself alone', async () => {
    expect((await page(seller)).toDo.map((t) => t.code)).toContain('TRANSFER_NOT_AGREED');
    await seller.send('/api/owner/transfer');
    expect((await seller.post('/api/owner/transfer')).status).toBe(422);
    expect((await page(seller)).transfer).toEqual({ party: 'seller', day: road.today, said: true, agreed: false });
    await buyer.send('/api/owner/transfer');
    expect((await page(buyer)).transfer).toMatchObject({ said: true, agreed: true });
    await road.look();
    expect(codes()).not.toContain('TRANSFER_NOT_AGREED');
  });

  it('begins the buyer’s page at the sale, with nothing that the seller said or signed', async () => {
    const seen = await page(buyer);
    expect(seen.status).toMatch(/being read/);
    expect(JSON.stringify(seen)).not.toMatch(new RegExp([road.dog.person.name, road.dog.person.phone].join('|')));
    expect(seen.consents.studies.map((s) => s.answered)).toEqual([null]);
    expect([seen.consents.sendAll.answered, seen.consents.statistics.answered, seen.documents]).toEqual([null, null, []]);
  });

  it('leaves the seller what was theirs and asks them nothing more', async () => {
    const seen = await page(seller);
    expect(seen).toMatchObject({ toDo: [], visit: null, results: [] });
    expect(seen.status).toMatch(/has a new owner/);
    expect(seen.documents.length).toBeGreaterThan(0);
    expect((await seller.post('/api/owner/withdraw', { purpose: 'study', subject: road.study().id })).status).toBe(422);
  });

  it('sends no letter before somebody has confirmed who gets it', async () => {
    await reader.acknowledge();
    await reader.reads({ joints: readings.elbow! });
    await road.look('vet');
    await road.act('vet', 'acceptResult', road.study().id, { result: road.study().results[0]!.id });
    const held = await road.attempt('vet', 'releaseLetter', road.study().id, {});
    expect((held.body as { because: { code: string }[] }).because.map((b) => b.code)).toEqual(['ADDRESSEE_TO_CONFIRM']);
    const wick = road.screen.dog.people.find((p) => p.person.name === 'Oda Wick' && !p.until)!.person.id;
    await road.act('desk', 'confirmAddressees', road.id, { people: [wick] });
    await road.act('vet', 'releaseLetter', road.study().id, {});
    const letter = await server.mail.wait(BUYER, /a letter from/);
    expect(letter.attachments.filter((a) => a.contentType === 'application/pdf')).toHaveLength(2);
    await server.settled();
    expect(server.mail.to(road.email).filter((m) => /a letter from/.test(m.subject))).toEqual([]);
  });

  it('shows the result to the buyer, and neither result nor letter to the seller', async () => {
    const [theirs, ours] = [await page(buyer), await page(seller)];
    expect(theirs.results).toHaveLength(1);
    expect(theirs.documents.map((d) => d.name).sort()).toEqual([expect.stringMatching(/letter to Oda Wick/), expect.stringMatching(/result sheet/)]);
    expect(ours.results).toEqual([]);
    for (const { id } of theirs.documents) {
      expect((await seller.get(`/api/owner/documents/${id}`)).status).toBe(404);
      expect((await buyer.get(`/api/owner/documents/${id}`)).status).toBe(200);
    }
    for (const { id } of ours.documents) expect((await buyer.get(`/api/owner/documents/${id}`)).status).toBe(404);
  });
});

describe('a dog that is renamed', () => {
  it('keeps its name on every paper, and is found by each of its names', async () => {
    const desk = await road.as('desk');
    const before = await Promise.all(road.screen.documents.map(({ id }) => desk.bytes(`/api/orders/${road.id}/documents/${id}`)));
    await desk.post(`/api/dogs/${road.dog.id}/names`, { name: 'Alder Riverbend', from: road.today }).expect(200);
    const after = await Promise.all(road.screen.documents.map(({ id }) => desk.bytes(`/api/orders/${road.id}/documents/${id}`)));
    expect(after.map((b) => b.equals(before[after.indexOf(b)]!))).toEqual(before.map(() => true));
    for (const q of ['Alder Riverbend', road.dog.registered]) {
      const { dogs } = await desk.read<{ dogs: { id: string }[] }>(`/api/search?q=${encodeURIComponent(q)}`);
      expect([q, dogs.map((d) => d.id)]).toEqual([q, expect.arrayContaining([road.dog.id])]);
    }
    expect((await desk.read<OrderScreen>(`/api/orders/${road.id}`)).dog.name).toBe('Alder Riverbend');
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
