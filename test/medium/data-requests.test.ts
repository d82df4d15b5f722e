import type { DataRequest, DataRequestList, RequestKind } from '#libs/contracts/requests';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { answerAtLatest, answerBy } from '#libs/science/request-clock';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { accept, getRead } from '#test/support/study-legs';
import { unzip } from '#test/support/unzip';
import { throughTheVisit } from '#test/support/visit-legs';
import type { Session } from '#test/support/session';

let server: RunningServer;
/** Corrie belongs to two people. */
let road: Road;
let owner: Session;
let manager: Session;
beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Corrie', studies: [['elbow', 'threnfold']], inDays: 1 });
  owner = await throughTheVisit(road);
  await getRead(road, road.study().id);
  await accept(road, road.study().id);
  await road.act('vet', 'releaseLetter', road.study().id, {});
  await server.settled();
  manager = await road.as('manager');
}, 90_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

const found = (list: DataRequestList, id: string): DataRequest => list.rows.find((r) => r.id === id)!;
async function ask(kind: RequestKind, more: { received?: string; person?: string } = {}): Promise<DataRequest> {
  const before = new Set((await manager.read<DataRequestList>('/api/requests')).rows.map((r) => r.id));
  const list = await manager.send<DataRequestList>('/api/requests', { person: road.dog.person.id, kind, asked: 'As written in a letter.', received: road.today, ...more });
  return list.rows.find((r) => !before.has(r.id))!;
}
const does = async (request: DataRequest, what: string, body: object = {}) => found(await manager.send<DataRequestList>(`/api/requests/${request.id}/${what}`, body), request.id);
const verify = (request: DataRequest) => does(request, 'verified', { how: 'Called back on the number in the register.' });
const refused = async (request: DataRequest, what: string, body: object = {}) => {
  const answer = await manager.post(`/api/requests/${request.id}/${what}`, body);
  return [answer.status, (answer.body as { code: string }).code];
};
const zipOf = (request: DataRequest) => manager.get(`/api/requests/${request.id}/person.zip`);

describe('a request', () => {
  it('is for the manager alone', async () => {
    for (const who of ['desk', 'nurse', 'vet'] as const) {
      const session = await road.as(who);
      expect((await session.get('/api/requests')).status).toBe(403);
      expect((await session.post('/api/requests', { person: road.dog.person.id, kind: 'access', asked: 'All.', received: road.today })).status).toBe(403);
    }
  });

  it('has a clock of a month from the day on which it was asked, and may be extended once it is said why', async () => {
    const request = await ask('access');
    expect(request).toMatchObject({ due: answerBy(road.today), latest: answerAtLatest(road.today), overdue: false, verified: null, closed: null });
    expect(await refused(request, 'extended', { until: request.due, why: 'Many films.' })).toEqual([400, 'BAD_INPUT']);
    expect(await refused(request, 'extended', { until: '2199-01-01', why: 'Many films.' })).toEqual([400, 'BAD_INPUT']);
    expect(await does(request, 'extended', { until: request.latest, why: 'Many films.' })).toMatchObject({ due: request.latest, overdue: false });
    expect((await manager.post('/api/requests', { person: road.dog.person.id, kind: 'access', asked: 'All.', received: '2199-01-01' })).status).toBe(400);
    await does(request, 'closed', { outcome: 'refused', words: 'Asked again below.' });
  });

  it('that nobody answered in time is overdue, and can no longer be extended', async () => {
    const request = await ask('correction', { received: '2026-01-31' });
    expect(request).toMatchObject({ due: '2026-02-28', overdue: true });
    expect(await refused(request, 'extended', { until: '2026-04-01', why: 'Forgotten.' })).toEqual([422, 'NOT_AT_THIS_STEP']);
    await does(request, 'closed', { outcome: 'refused', words: 'Answered by phone at the time.' });
    expect(await refused(request, 'noted', { words: 'One more.' })).toEqual([422, 'NOT_AT_THIS_STEP']);
  });

  it('gives, restricts and erases nothing before it is written down how the person was made sure of, and by whom', async () => {
    const kinds: [RequestKind, string][] = [['erasure', 'erased'], ['restriction', 'restricted'], ['objection', 'objected']];
    for (const [kind, what] of kinds) expect([kind, ...(await refused(await ask(kind), what))]).toEqual([kind, 422, 'NOT_AT_THIS_STEP']);
    const access = await ask('access');
    expect((await zipOf(access)).status).toBe(422);
    expect(await refused(access, 'closed', { outcome: 'done', words: 'Done.' })).toEqual([422, 'NOT_AT_THIS_STEP']);
    expect((await verify(access)).verified).toMatchObject({ how: 'Called back on the number in the register.', by: road.name('manager') });
    expect(await refused(access, 'erased')).toEqual([422, 'NOT_AT_THIS_STEP']);
    expect(await refused(access, 'closed', { outcome: 'done', words: 'Done.' })).toEqual([422, 'NOT_AT_THIS_STEP']);
  });
});

it('access: one zip with what is kept about the person, their papers and films, and nobody else’s name', async () => {
  const request = await verify(await ask('access'));
  const files = await unzip(await manager.bytes(`/api/requests/${request.id}/person.zip`));
  const names = [...files.keys()];
  const folder = `order-${road.screen.accession}`;
  expect(names.filter((n) => n.startsWith(`${folder}/films/`))).toHaveLength(road.screen.exposures.length);
  expect(names.filter((n) => n.startsWith(`${folder}/papers/`)).length).toBeGreaterThanOrEqual(3);
  for (const paper of names.filter((n) => n.endsWith('.pdf'))) expect(files.get(paper)!.subarray(0, 5).toString()).toBe('%PDF-');
  const all = names.filter((n) => n.endsWith('.json')).map((n) => files.get(n)!.toString()).join('\n');
  expect(all).toContain(road.dog.person.name);
  expect(all).toContain(road.email);
  expect((JSON.parse(files.get(`${folder}/record.json`)!.toString()) as { type: string }[]).map((f) => f.type)).toEqual(expect.arrayContaining(['consentGiven', 'readingTaken', 'letterReleased']));
  const coOwner = road.screen.dog.people.find((p) => p.role === 'coOwner')!.person;
  expect(coOwner.name).not.toBe(road.dog.person.name);
  for (const word of [coOwner.name, coOwner.id, coOwner.email!]) expect(all).not.toContain(word);
  expect((await does(request, 'closed', { outcome: 'done', words: 'Handed over on a stick.' })).closed).toMatchObject({ outcome: 'done', by: road.name('manager') });
});

it('objection: the yes to statistics is taken back later, and no road moves', async () => {
  await road.look();
  const step = road.screen.step;
  expect(road.screen.statistics).toBe(true);
  const request = await does(await verify(await ask('objection')), 'objected');
  expect(request.events.at(-1)!.words).toContain(road.screen.accession);
  await road.look();
  expect(road.screen).toMatchObject({ statistics: false, step });
  expect((await owner.read<OwnerPage>('/api/owner')).consents.statistics.answered).not.toBe('yes');
});

describe('restriction', () => {
  let request: DataRequest;
  const links = () => server.mail.to(road.email).filter((m) => /\/o\//.test(m.text)).length;

  it('keeps every mail to the person back', async () => {
    request = await does(await verify(await ask('restriction')), 'restricted');
    expect(request.restricted).toBe(true);
    const before = links();
    await (await road.as('desk')).post(`/api/orders/${road.id}/owner-link`).expect(200);
    await server.settled();
    await server.sweep();
    expect(links()).toBe(before);
    await road.look();
    expect(road.screen.messages.find((m) => m.detail === 'waits: RESTRICTED')).toBeDefined();
  });

  it('books nothing new for the person until it is lifted', async () => {
    await expect(Road.book(server, { dog: 'Corrie', studies: [['elbow', 'threnfold']], inDays: 9 })).rejects.toThrow(/422/);
  });

  it('outlives its request, and when it is lifted what waited goes, once', async () => {
    await does(request, 'closed', { outcome: 'done', words: 'Told by letter.' });
    const before = links();
    await does(request, 'restriction-lifted', { words: 'The person asked to be written to again.' });
    server.clock.advance({ minutes: 20 });
    await server.sweep();
    await server.sweep();
    expect(links()).toBe(before + 1);
  });
});

describe('erasure', () => {
  it('takes the person out everywhere at once, ends their links, and says what stays and why', async () => {
    const other = await Road.book(server, { dog: 'Wenna', studies: [['elbow', 'threnfold']], inDays: 5 });
    expect(other.dog.person.id).toBe(road.dog.person.id);
    await server.settled();
    const request = await verify(await ask('erasure'));
    expect(request.kept.map((k) => k.what).join('\n')).toMatch(/treatment record of 2 orders[\s\S]*papers as issued[\s\S]*films/);
    for (const { ground } of request.kept) expect(ground).toMatch(/\.$/);
    expect(await does(request, 'erased')).toMatchObject({ person: { name: 'Erased on request', email: null, phone: null, erased: true } });
    expect((await owner.get('/api/owner')).status).toBe(401);
    for (const order of [road, other]) {
      await order.look();
      expect(JSON.stringify(order.screen.dog.people)).not.toContain(order.email);
      expect(order.screen.happened.filter((h) => h.what === 'A person’s data erased on request')).toHaveLength(1);
    }
    const mail = server.mail.to(road.email).length;
    await server.until(other.at(1, '10:00'));
    await server.sweep();
    expect(server.mail.to(road.email)).toHaveLength(mail);
    const rows = await server.look((tx) => tx.message.count({ where: { personId: road.dog.person.id, NOT: { toEmail: '' } } }));
    expect(rows).toBe(0);
    expect(await server.look((tx) => tx.tombstone.count({ where: { personId: road.dog.person.id } }))).toBe(1);
    expect((await (await road.as('desk')).read<{ rows: { name: string }[] }>(`/api/people?q=${encodeURIComponent(road.dog.person.name)}`)).rows.map((r) => r.name)).not.toContain(road.dog.person.name);
  });

  it('leaves what was said and done as it was', async () => {
    const types = await server.look((tx) => tx.fact.findMany({ where: { orderId: road.id }, select: { type: true } }));
    expect(types.map((f) => f.type)).toEqual(expect.arrayContaining(['consentGiven', 'letterReleased', 'personErased']));
    const letter = road.screen.documents.find((d) => d.kind === 'letter')!;
    expect((await (await road.as('vet')).bytes(`/api/orders/${road.id}/documents/${letter.id}`)).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('asked for a second time changes nothing', async () => {
    await expect(ask('erasure')).rejects.toThrow();
    expect(await server.look((tx) => tx.fact.count({ where: { type: 'personErased' } }))).toBe(2);
  });
});
