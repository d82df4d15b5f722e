import type { Twins } from '#libs/contracts/people';
import type { Dog } from '#libs/contracts/register';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { getRead, release } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
/** A dog with a whole order behind it, and the second entry of the same dog. */
let road: Road;
let desk: Session;
let again: Dog;
let papers: Buffer[];

const merge = (kept: string, gone: string, who = desk) => who.post(`/api/dogs/${kept}/merge`, { gone, why: 'Scanned at the desk: one dog, entered twice.' });
const bytes = () => Promise.all(road.screen.documents.map(({ id }) => desk.bytes(`/api/orders/${road.id}/documents/${id}`)));
const found = async (q: string) => (await desk.read<{ dogs: { id: string }[] }>(`/api/search?q=${encodeURIComponent(q)}`)).dogs.map((d) => d.id);

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
  await throughTheVisit(road);
  await getRead(road, road.study().id);
  await release(road, road.study().id);
  await server.settled();
  await road.look();
  desk = await road.as('desk');
  papers = await bytes();
  const { birth, breed, sex } = road.screen.dog;
  again = (await desk.post('/api/dogs', { name: road.dog.registered.toUpperCase(), callName: 'Aldy', breed, sex, birth, identifier: { kind: 'none', how: 'scanned' }, owner: { person: road.dog.person.id } }).expect(201)).body as Dog;
}, 120_000);
afterAll(async () => { await server.close(); });

it('two entries with one name and birth are found, and nobody else’s dogs', async () => {
  const { rows } = await desk.read<Twins>('/api/dog-twins');
  const pair = rows.find((r) => r.dogs.some((d) => d.id === again.id))!;
  expect([pair.why, pair.dogs.map((d) => d.id).sort()]).toEqual(['nameAndBirth', [road.dog.id, again.id].sort()]);
  expect(rows.every((r) => r.dogs.length === 2)).toBe(true);
  const other = await (await server.as('Ebba Lyndal')).read<Twins>('/api/dog-twins');
  expect(JSON.stringify(other)).not.toContain(again.id);
});

it('entries that share nothing are not merged, nor by somebody who does not keep the register', async () => {
  const stranger = server.scheme.dogs.get('Sorrel')!;
  const answer = await merge(again.id, stranger.id);
  expect([answer.status, (answer.body as { message: string }).message]).toEqual([400, expect.stringMatching(/share neither a number nor a name/)]);
  expect((await merge(again.id, road.dog.id, await road.as('nurse'))).status).toBe(403);
  expect((await desk.post(`/api/dogs/${again.id}/merge`, { gone: road.dog.id, why: ' ' })).status).toBe(400);
});

it('of two desks that merge the same entry at once, one does', async () => {
  const manager = await server.as('Hedda Lorne');
  const answers = await Promise.all([merge(road.dog.id, again.id), merge(road.dog.id, again.id, manager)]);
  expect(answers.map((a) => a.status).sort()).toEqual([200, 409]);
});

describe('after the merge', () => {
  let kept: Dog;
  let gone: string;
  beforeAll(async () => {
    kept = await desk.read<Dog>(`/api/dogs/${road.dog.id}`);
    gone = [road.dog.id, again.id].find((id) => id !== kept.id)!;
  });

  it('the order stands at the dog that stayed, under its old number', async () => {
    const before = road.screen;
    await road.look();
    expect([road.screen.accession, road.screen.dog.id]).toEqual([before.accession, kept.id]);
    expect(road.screen.documents).toEqual(before.documents);
  });

  it('every paper is the same to the last byte', async () => {
    expect((await bytes()).map((b, i) => b.equals(papers[i]!))).toEqual(papers.map(() => true));
  });

  it('both animal numbers, all names and the transponder find it', async () => {
    const numbers = [kept.animalId, ...kept.merged.map((m) => m.animalId)];
    expect(numbers).toHaveLength(2);
    for (const q of [...numbers, road.dog.registered, 'Aldy', road.dog.transponder]) expect([q, (await found(q))[0], (await found(q)).includes(gone)]).toEqual([q, kept.id, false]);
    expect((await desk.read<Dog>(`/api/dogs/${gone}`)).id).toBe(kept.id);
  });

  it('the entry that went is a tombstone: with a reason and a name, changed by nobody, booked by nobody', async () => {
    expect(kept.merged[0]).toMatchObject({ why: 'Scanned at the desk: one dog, entered twice.' });
    expect((await desk.post(`/api/dogs/${gone}/names`, { name: 'Another', from: road.today })).status).toBe(409);
    expect((await merge(kept.id, gone)).status).toBe(409);
    expect((await desk.read<Twins>('/api/dog-twins')).rows.flatMap((r) => r.dogs.map((d) => d.id))).not.toContain(gone);
  });

  it('an open order learns the numbers of the merged dog', async () => {
    const next = await Road.book(server, { dog: 'Alder', studies: [['hipLaxity', 'threnfold']], inDays: 20 });
    const { birth, breed, sex } = kept;
    const third = (await desk.post('/api/dogs', { name: kept.name, breed, sex, birth, identifier: { kind: 'tattoo', value: 'AL77', how: 'typedTwice', again: 'AL77' }, owner: { person: road.dog.person.id } }).expect(201)).body as Dog;
    await merge(kept.id, third.id).expect(200);
    const screen = await desk.read<OrderScreen>(`/api/orders/${next.id}`);
    expect(screen.happened.map((h) => h.what)).toContain('Dog’s birth date or numbers corrected');
    expect(screen.dog.identifiers.map((i) => i.value)).toEqual(expect.arrayContaining(['AL77', road.dog.transponder]));
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
