import type { Closing, Closures } from '#libs/contracts/people';
import type { Dog } from '#libs/contracts/register';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { addDays } from '#libs/pathway/days';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { openLink, type Session } from '#test/support/session';
import { AtReader } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
afterEach(() => expect(server.errors).toEqual([]));

describe('a practice that closes', () => {
  let kestrel: Road;
  let other: Road;
  let manager: Session;
  let weirside: Session;

  beforeAll(async () => {
    server = await startServer();
    kestrel = await Road.book(server, { dog: 'Kestrel', studies: [['elbow', 'threnfold']], inDays: 1 });
    await throughTheVisit(kestrel);
    other = await Road.book(server, { dog: 'Corrie', studies: [['elbow', 'threnfold']], inDays: 1 });
    [manager, weirside] = await Promise.all(['Pell Vantry', 'Marit Oskar'].map((name) => server.as(name))) as [Session, Session];
  }, 90_000);
  afterAll(async () => { await server.close(); });

  it('is closed by its manager alone, on a day to come', async () => {
    expect((await (await server.as('Mirre Quist')).post('/api/practice/closing', { lastDay: addDays(kestrel.today, 30) })).status).toBe(403);
    expect((await manager.post('/api/practice/closing', { lastDay: '2026-01-02' })).status).toBe(400);
    expect(await manager.read<Closing>('/api/practice/closing')).toEqual({ lastDay: null, orders: [] });
  });

  it('lists its open orders, each held until it is handed over, and opens no new one', async () => {
    const lastDay = addDays(kestrel.today, 30);
    const closing = await manager.send<Closing>('/api/practice/closing', { lastDay });
    expect(closing.orders.map((o) => o.accession)).toContain(kestrel.screen.accession);
    expect(closing.orders.every((o) => o.accession.startsWith('KR'))).toBe(true);
    await kestrel.look();
    expect(kestrel.screen.holds.find((h) => h.code === 'PRACTICE_CLOSING')).toMatchObject({ by: lastDay, ways: expect.arrayContaining(['handOver']) as string[] });
    expect((await manager.post('/api/practice/closing', { lastDay })).status).toBe(409);
    await expect(Road.book(server, { dog: 'Kestrel', studies: [['elbow', 'threnfold']], inDays: 20 })).rejects.toThrow(/422/);
  });

  it('hands no order over without its owner’s yes, nor to a practice that is none', async () => {
    for (const input of [{ to: server.scheme.houses.weirside.id, ownerAgreed: false }, { to: server.scheme.houses.karsby.id, ownerAgreed: true }]) expect((await kestrel.attempt('manager', 'handOver', kestrel.id, input)).status).toBe(400);
    expect((await weirside.get(`/api/orders/${kestrel.id}`)).status).toBe(404);
  });

  it('hands one over with dog and people: the other practice has the order from then on, and both are told', async () => {
    const { accession } = kestrel.screen;
    await kestrel.act('manager', 'handOver', kestrel.id, { to: server.scheme.houses.weirside.id, ownerAgreed: true });
    const theirs = await weirside.read<OrderScreen>(`/api/orders/${kestrel.id}`);
    expect([theirs.accession, theirs.practice.name]).toEqual([accession, 'Weirside Animal Practice']);
    expect(theirs.holds.map((h) => h.code)).not.toContain('PRACTICE_CLOSING');
    expect((await server.mail.wait('desk@weirside.example', /is now yours/)).text).toContain(accession);
    const told = await server.mail.wait(kestrel.email, /Weirside Animal Practice looks after you now/);
    const page = await (await openLink(server.url, told)).read<{ practice: { name: string } }>('/api/owner');
    expect(page.practice.name).toBe('Weirside Animal Practice');
    expect((await manager.read<Closing>('/api/practice/closing')).orders.map((o) => o.accession)).not.toContain(accession);
  });

  it('lets the new practice go on with it as with its own: send the films, change the register', async () => {
    const order = await weirside.read<OrderScreen>(`/api/orders/${kestrel.id}`);
    const study = order.studies[0]!.id;
    const does = async (action: string) => (await weirside.post(`/api/orders/${kestrel.id}/actions/${action}`, { key: crypto.randomUUID(), version: (await weirside.read<OrderScreen>(`/api/orders/${kestrel.id}`)).version, on: study, input: {} })).status;
    expect([await does('seal'), await does('send')]).toEqual([200, 200]);
    const dog = await weirside.post(`/api/dogs/${order.dog.id}/names`, { name: 'Kestrel of Weirside', from: kestrel.today });
    expect([dog.status, (dog.body as Dog).name]).toEqual([200, 'Kestrel of Weirside']);
    expect((await weirside.post(`/api/people/${kestrel.dog.person.id}`, { name: kestrel.dog.person.name, email: kestrel.email, channel: 'mail' })).status).toBe(200);
  });

  it('leaves the old practice what it did, and no more than that to change', async () => {
    expect((await manager.get(`/api/orders/${kestrel.id}`)).status).toBe(200);
    expect((await manager.post(`/api/dogs/${kestrel.dog.id}/names`, { name: 'Back again', from: kestrel.today })).status).toBe(403);
    expect((await kestrel.attempt('manager', 'handOver', kestrel.id, { to: server.scheme.houses.sorn.id, ownerAgreed: true })).status).not.toBe(200);
    expect((await (await server.as('Ebba Lyndal')).get(`/api/orders/${kestrel.id}`)).status).toBe(404);
  });

  it('holds nobody else’s orders', async () => {
    await other.look();
    expect(other.screen.holds.map((h) => h.code)).not.toContain('PRACTICE_CLOSING');
  });
});

describe('an order whose visit is still to come', () => {
  let road: Road;
  beforeAll(async () => {
    server = await startServer();
    road = await Road.book(server, { dog: 'Kestrel', studies: [['elbow', 'threnfold']], inDays: 20 });
  }, 90_000);
  afterAll(async () => { await server.close(); });

  it('gives its day back when it is handed over, tells the owner, and leaves a new day to the new practice', async () => {
    const [manager, weirside] = await Promise.all(['Pell Vantry', 'Marit Oskar'].map((name) => server.as(name))) as [Session, Session];
    await manager.send('/api/practice/closing', { lastDay: addDays(road.today, 30) });
    await road.look();
    await road.act('manager', 'handOver', road.id, { to: server.scheme.houses.weirside.id, ownerAgreed: true });
    expect((await server.mail.wait(road.email, /Weirside Animal Practice looks after you now/)).text).toMatch(/The visit with us on .* is cancelled/);
    expect(await server.look((tx) => tx.slot.count({ where: { orderId: road.id } }))).toBe(0);
    const theirs = await weirside.read<OrderScreen>(`/api/orders/${road.id}`);
    expect(theirs.next.filter((n) => n.allowed).map((n) => n.action)).toContain('openVisit');
  });
});

describe('a centre that is closed', () => {
  let road: Road;
  let desk: Session;
  const close = (body: object) => desk.post(`/api/practice/centres/${server.scheme.centres.threnfold.id}/closures`, { how: 'Their own letter.', ...body });
  const study = () => road.study();
  const codes = () => road.screen.holds.map((h) => h.code);

  beforeAll(async () => {
    server = await startServer();
    road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
    desk = await road.as('desk');
    await throughTheVisit(road);
  }, 90_000);
  afterAll(async () => { await server.close(); });

  it('is written down by the desk, with days that can be', async () => {
    expect((await (await road.as('nurse')).post(`/api/practice/centres/${server.scheme.centres.threnfold.id}/closures`, { from: road.today, how: 'Heard.' })).status).toBe(403);
    expect((await close({ from: road.today, until: addDays(road.today, -1) })).status).toBe(400);
    const rows = (await close({ from: road.today, until: addDays(road.today, 2) }).expect(200)).body as Closures;
    expect(rows.rows).toEqual([{ centre: server.scheme.centres.threnfold.id, from: road.today, until: addDays(road.today, 2), how: 'Their own letter.', by: road.name('desk') }]);
  });

  it('holds a package that is sealed while it is closed, and lets it go afterwards', async () => {
    await road.look();
    await road.act('desk', 'seal', study().id, {});
    expect(codes()).toContain('CENTRE_CLOSED');
    expect((await road.attempt('desk', 'send', study().id, {})).status).toBe(422);
    await server.until(road.at(3, '09:00'));
    await server.sweep();
    await road.look();
    expect(codes()).not.toContain('CENTRE_CLOSED');
    await road.act('desk', 'send', study().id, {});
    await AtReader.of(road, study().id);
  });

  it('is not taken for one that answers: a machine’s reply is kept and stops no clock', async () => {
    await road.look();
    const { dueDay } = study().chase!;
    await road.act('desk', 'recordAutoReply', study().id, { note: 'We are at a congress.' });
    expect(study().chase).toMatchObject({ clock: 'ack', dueDay });
    expect(road.screen.happened[0]!.what).toMatch(/An automatic answer came from the centre: We are at a congress\.; it counts for nothing/);
    expect(study().sends.at(-1)!.acknowledged).toBe(false);
  });

  it.each(['unpaid', 'bounced', 'lost'] as const)('with a cause known as %s, the manager hears of it, and it can be cleared', async (cause) => {
    await road.act('desk', 'recordCause', study().id, { cause });
    expect(codes()).toContain(cause === 'unpaid' ? 'UNPAID' : 'CAUSE_KNOWN');
    expect(study().chase).toMatchObject({ act: 'escalate', cause });
    await server.sweep();
    expect(server.mail.to('hedda@weirside.example').length).toBeGreaterThan(0);
    await road.look();
    await road.act('desk', 'clearCause', study().id, { cause });
    expect(codes()).not.toContain('UNPAID');
  });

  it('has a cause by itself when the reminder to it comes back', async () => {
    server.mail.nextTo('films@threnfold.example', 'refused');
    await server.until(road.at(10, '09:00'));
    await server.sweep();
    await server.until(road.at(10, '09:01'));
    await road.look();
    expect(study().chase).toMatchObject({ act: 'escalate', cause: 'bounced', reminders: 1 });
    await road.act('desk', 'clearCause', study().id, { cause: 'bounced' });
  });

  it('for good tells the owner, asks for another centre, and asks the owner anew', async () => {
    await close({ from: road.today, how: 'They have given up reading.' }).expect(200);
    await road.look();
    expect(road.screen.holds.find((h) => h.code === 'CENTRE_CLOSED')).toMatchObject({ until: null, ways: expect.arrayContaining(['changeCentre', 'endStudy']) as string[] });
    expect((await server.mail.wait(road.email, /the reading centre has closed/)).text).toContain('No picture is lost.');
    await road.act('desk', 'changeCentre', study().id, { centre: server.scheme.centres.sluiceGreen.id });
    expect(codes()).not.toContain('CENTRE_CLOSED');
    expect(codes()).toContain('CONSENT_STUDY_MISSING');
  });
});
