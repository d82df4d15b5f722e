import { randomUUID } from 'node:crypto';
import { checkDicom } from '#libs/dicom/check-dicom';
import { newUid } from '#libs/dicom/uids';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { receiveImage } from '#libs/steps/gateway/receive-image';
import { aRadiograph } from '#test/peers/support/a-film';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { openLink, type Session } from '#test/support/session';
import { Happenings } from '#test/medium/queue-support/until';

let server: RunningServer;
let road: Road;
const lines: Line[] = [];
beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']] });
  await server.settled();
  // The server's own line to the database is open as long as one page is.
  const first = await Line.of(await road.as('manager'));
  await first.until('missed');
  lines.pop();
}, 60_000);
afterEach(() => { for (const line of lines.splice(0)) line.close(); });
afterAll(async () => { await server.close(); });

/** What an open page of this person hears. */
class Line {
  readonly #heard = new Happenings<string>();
  readonly #over = new AbortController();

  static async of(session: Session): Promise<Line> {
    const line = new Line();
    lines.push(line);
    const reply = await fetch(`${server.url}/api/live`, { headers: { cookie: session.cookie }, signal: line.#over.signal });
    expect([reply.status, reply.headers.get('content-type')]).toEqual([200, 'text/event-stream']);
    void line.#read(reply.body!);
    await line.until('breath');
    return line;
  }

  async #read(body: ReadableStream<Uint8Array>): Promise<void> {
    try {
      for await (const text of body.pipeThrough(new TextDecoderStream())) this.#heard.add(text);
    } catch { /* closed */ }
  }

  get all(): string { return this.#heard.all.join(''); }
  async until(words: string): Promise<void> { await this.#heard.until(() => this.all.includes(words)); }
  close(): void { this.#over.abort(); }
}

it('an act of one person is heard on the open pages of the practice, as the order’s number and nothing more', async () => {
  const line = await Line.of(await road.as('nurse'));
  await road.act('desk', 'giveAnswers', road.screen.visits[0]!.id, { stage: 'booking', answers: { ill: 'no' } });
  await line.until(road.id);
  expect(line.all).toMatch(new RegExp(`event: order\nid: \\d+\ndata: {"order":"${road.id}"}\n`));
  expect(line.all).not.toMatch(/Alder|Weirside|AR26/);
});

it('another practice hears nothing of it, nor a centre that has no package of the order', async () => {
  const others = await Promise.all(['Pell Vantry', 'Noemi Haskel'].map(async (name) => Line.of(await server.as(name))));
  const own = await Line.of(await road.as('vet'));
  await road.act('desk', 'giveAnswers', road.screen.visits[0]!.id, { stage: 'booking', answers: { ill: 'no' } });
  await own.until(road.id);
  for (const line of others) expect(line.all).not.toContain(road.id);
});

it('an owner’s open page hears of its own order alone', async () => {
  const other = await Road.book(server, { dog: 'Kestrel', studies: [['elbow', 'threnfold']] });
  const owner = await Line.of(await openLink(server.url, await server.mail.wait(road.email, /Alder/)));
  await other.act('desk', 'giveAnswers', other.screen.visits[0]!.id, { stage: 'booking', answers: { ill: 'no' } });
  await road.act('desk', 'giveAnswers', road.screen.visits[0]!.id, { stage: 'booking', answers: { ill: 'no' } });
  await owner.until(road.id);
  expect(owner.all).not.toContain(other.id);
});

it('what became of a mail is heard too', async () => {
  const line = await Line.of(await road.as('desk'));
  await (await road.as('desk')).post(`/api/orders/${road.id}/owner-link`).expect(200);
  await line.until(road.id);
});

it('an image that fits no order is heard in its practice, as no more than that, and by nobody else', async () => {
  const practice = road.house.id;
  const console = randomUUID();
  await server.look((tx) => tx.console.create({ data: { id: console, practiceId: practice, name: 'X-ray room', aeTitle: 'DXROOM1', address: '127.0.0.1', at: server.clock.now(), by: 'a test', byName: 'A test' } }));
  const order = await Road.book(server, { dog: 'Gale', studies: [['elbow', 'threnfold']] });
  const own = await Line.of(await road.as('nurse'));
  const owner = await Line.of(await openLink(server.url, await server.mail.wait(order.email, /Gale/)));
  const others = await Promise.all(['Pell Vantry', 'Noemi Haskel'].map(async (name) => Line.of(await server.as(name))));
  const film = checkDicom(writeRadiograph(aRadiograph({ accession: '', studyUid: newUid() })));
  const came = { sha256: 'a'.repeat(64), size: 1, image: { ...film, sopInstanceUid: film.sopInstanceUid! } };
  expect(await receiveImage(server.deps, { practice, console, name: 'X-ray room' }, came)).toBe('unmatched');
  await own.until('event: tray');
  expect(own.all).not.toMatch(/Heron|Ann Wist|a{64}/);
  await order.act('desk', 'giveAnswers', order.screen.visits[0]!.id, { stage: 'booking', answers: { ill: 'no' } });
  await Promise.all([own.until(order.id), owner.until(order.id)]);
  for (const line of [owner, ...others]) expect(line.all).not.toContain('tray');
});

it('a server that stops ends its lines and does not wait for open pages', async () => {
  const own = await startServer();
  const reply = await fetch(`${own.url}/api/live`, { headers: { cookie: (await own.as('Marit Oskar')).cookie } });
  await own.close();
  for await (const _ of reply.body!.pipeThrough(new TextDecoderStream())) { /* until it ends */ }
});

it('nobody who is not signed in has a line', async () => {
  expect((await fetch(`${server.url}/api/live`)).status).toBe(401);
});
