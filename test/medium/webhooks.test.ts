import { createHmac } from 'node:crypto';
import type { OrderEvent, Webhooks } from '#libs/contracts/integrations';
import { PAUSES } from '#libs/steps/webhooks/send-webhook';
import { dogNamed } from '#seed/demo-scheme';
import { Receiver, type Heard } from '#test/support/receiver';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';

let server: RunningServer;
let receiver: Receiver;
let manager: Session;
let other: Session;

beforeAll(async () => {
  receiver = await new Receiver().start();
  server = await startServer({ allow: [receiver.place] });
  manager = await server.as(dogNamed(server.scheme, 'Heron').house.manager.name);
  other = await server.as(dogNamed(server.scheme, 'Lichen').house.manager.name);
}, 120_000);
afterAll(async () => {
  await server.close();
  receiver.close();
});
beforeEach(() => {
  receiver.heard.length = 0;
  receiver.answer = 204;
});

const path = '/api/practice/webhooks';
const make = (who: Session, events: OrderEvent[], name = 'Practice software') => who.send<Webhooks>(path, { name, address: receiver.address, events });
const endAll = async (who: Session) => {
  for (const { id } of (await who.read<Webhooks>(path)).rows) await who.send(`${path}/${id}/end`);
};
afterEach(async () => {
  await server.settled();
  await endAll(manager);
  await endAll(other);
});
const signed = ({ headers, body }: Heard, secret: string) => String(headers['webhook-signature']).split(' ').includes(`v1=${createHmac('sha256', secret).update(`${String(headers['webhook-timestamp'])}.${body}`).digest('hex')}`);
const deliveries = async (who = manager) => (await who.read<Webhooks>(path)).deliveries;
/** Each of them once: a dog is not booked twice for the same. */
const dogs = ['Heron', 'Cinder', 'Cobble', 'Flint', 'Linnet', 'Reed', 'Fern', 'Alder', 'Moss', 'Sedge'];
const book = () => Road.book(server, { dog: dogs.shift()!, studies: [['hipLaxity', 'threnfold']], inDays: 14 });
const later = (minutes: number) => server.until(new Date(server.clock.now().getTime() + minutes * 60_000));

it('an event is told once, signed, with the order’s number and nobody’s name', async () => {
  const { secret } = await make(manager, ['order.opened', 'visit.booked', 'dog.died']);
  const road = await book();
  await server.settled();
  const told = receiver.heard.map(({ body }) => JSON.parse(body) as { id: string; event: string; order: string; at: string });
  expect(told.map((t) => t.event).sort()).toEqual(['order.opened', 'visit.booked']);
  for (const heard of receiver.heard) {
    const { id, ...rest } = JSON.parse(heard.body) as { id: string };
    expect(Object.keys(rest).sort()).toEqual(['at', 'event', 'order']);
    expect(rest).toMatchObject({ order: road.screen.accession });
    expect(heard.headers['webhook-id']).toBe(id);
    expect(signed(heard, secret!.secret)).toBe(true);
    expect(signed(heard, 'another')).toBe(false);
    for (const word of [road.dog.call, road.dog.person.name]) expect(heard.body).not.toContain(word);
  }
  await server.sweep();
  expect(receiver.heard).toHaveLength(2);
  expect((await deliveries()).map((d) => [d.state, d.tries.map((t) => t.words)])).toEqual([['delivered', ['Taken (204).']], ['delivered', ['Taken (204).']]]);
});

it('another practice’s address hears nothing of it, sees nothing of it and changes nothing of it', async () => {
  await make(other, ['order.opened']);
  const own = await make(manager, ['order.opened']);
  await book();
  await server.settled();
  expect(receiver.heard).toHaveLength(1);
  expect(await deliveries(other)).toEqual([]);
  expect((await other.read<Webhooks>(path)).rows.map((r) => r.id)).not.toContain(own.rows.at(-1)!.id);
  const [told] = await deliveries();
  for (const url of [`${path}/${own.rows.at(-1)!.id}/end`, `${path}/${own.rows.at(-1)!.id}/secret`, `${path}/deliveries/${told!.id}/again`]) await other.post(url).expect(404);
  expect((await manager.read<Webhooks>(path)).rows).toHaveLength(1);
});

it('is tried again after growing pauses, then given up, shown, and sent again by a person', async () => {
  await make(manager, ['order.opened']);
  receiver.answer = 503;
  await book();
  await server.settled();
  expect(receiver.heard).toHaveLength(1);
  for (const [n, pause] of PAUSES.entries()) {
    await later(pause - 0.5);
    expect(receiver.heard).toHaveLength(n + 1);
    await later(0.5);
    expect(receiver.heard).toHaveLength(n + 2);
  }
  await later(24 * 60);
  await server.sweep();
  expect(receiver.heard).toHaveLength(PAUSES.length + 1);
  const [given] = await deliveries();
  expect(given).toMatchObject({ state: 'givenUp', tries: Array.from({ length: PAUSES.length + 1 }, () => ({ words: 'It answered 503.' })) });
  expect(new Set(receiver.heard.map((h) => h.headers['webhook-id'])).size).toBe(1);
  receiver.answer = 200;
  await manager.send(`${path}/deliveries/${given!.id}/again`);
  await server.settled();
  expect((await deliveries())[0]).toMatchObject({ id: given!.id, state: 'delivered' });
  expect((await deliveries())[0]!.tries.at(-1)!.words).toBe('Taken (200).');
}, 120_000);

it('is not lost with the queue: what is due is found from the database alone', async () => {
  await make(manager, ['order.opened']);
  receiver.answer = 500;
  await book();
  await server.settled();
  await server.look((tx) => tx.$executeRaw`DELETE FROM outbox WHERE relayed_at IS NULL AND job = 'send-webhook'`);
  receiver.answer = 204;
  await later(PAUSES[0]! + 4);
  expect(receiver.heard).toHaveLength(1);
  await server.sweep();
  expect(receiver.heard).toHaveLength(2);
});

it('survives a worker that is killed in the middle of the call: it is called again under the same id, and the log says so', async () => {
  await make(manager, ['order.opened']);
  receiver.answer = undefined;
  await server.killingWorker(async () => void (await book()), 2500);
  receiver.answer = 204;
  await later(5);
  await server.sweep();
  const ids = receiver.heard.map((h) => h.headers['webhook-id']);
  expect(ids.length).toBeGreaterThanOrEqual(2);
  expect(new Set(ids).size).toBe(1);
  const [told] = await deliveries();
  expect(told!.state).toBe('delivered');
  expect(told!.tries[0]!.words).toContain('stopped while it called');
}, 120_000);

it('a new secret signs at once, and the one before beside it for a day', async () => {
  const { secret, rows } = await make(manager, ['order.opened']);
  const changed = await manager.send<Webhooks>(`${path}/${rows[0]!.id}/secret`);
  expect(changed.secret!.secret).not.toBe(secret!.secret);
  await book();
  await server.settled();
  expect([signed(receiver.heard[0]!, secret!.secret), signed(receiver.heard[0]!, changed.secret!.secret)]).toEqual([true, true]);
  await later(24 * 60 + 1);
  await book();
  await server.settled();
  expect([signed(receiver.heard.at(-1)!, secret!.secret), signed(receiver.heard.at(-1)!, changed.secret!.secret)]).toEqual([false, true]);
});

it('a test call is marked as one, signed, tells of no order, and stands in the log with what came of it', async () => {
  const { rows, secret } = await make(manager, ['dog.died']);
  receiver.answer = 503;
  await manager.send(`${path}/${rows[0]!.id}/test`);
  await server.settled();
  const [heard] = receiver.heard as [Heard];
  expect(JSON.parse(heard.body)).toEqual({ id: heard.headers['webhook-id'], event: 'test', test: true, at: expect.any(String) });
  expect(signed(heard, secret!.secret)).toBe(true);
  expect(await deliveries()).toMatchObject([{ event: 'test', order: null, accession: null, state: 'givenUp', tries: [{ words: 'It answered 503.', answer: 'busy', status: 503 }] }]);
  await later(24 * 60);
  await server.sweep();
  expect(receiver.heard).toHaveLength(1);
  receiver.answer = 204;
  await manager.send(`${path}/${rows[0]!.id}/test`);
  await server.settled();
  expect((await deliveries()).find((d) => d.state === 'delivered')).toMatchObject({ event: 'test', tries: [{ answer: 'taken', status: 204 }] });
  await manager.send(`${path}/${rows[0]!.id}/end`);
  await manager.post(`${path}/${rows[0]!.id}/test`).expect(404);
});

it('an address inside our own network is refused with a sentence, and a secret is shown once', async () => {
  for (const address of ['https://127.0.0.1/x', 'https://10.0.0.9/', 'http://192.0.2.1/', 'nothing']) {
    const { body } = await manager.post(path, { name: 'Inside', address, events: ['order.opened'] }).expect(400);
    expect((body as { fields: { path: string }[] }).fields[0]!.path).toBe('address');
  }
  const { secret } = await make(manager, ['order.opened']);
  expect(JSON.stringify(await manager.read(path))).not.toContain(secret!.secret);
  await (await server.as(dogNamed(server.scheme, 'Heron').house.desk.name)).get(path).expect(403);
});

it('an address that was ended hears nothing more, not even what waited', async () => {
  const { rows } = await make(manager, ['order.opened']);
  receiver.answer = 500;
  await book();
  await server.settled();
  await manager.send(`${path}/${rows[0]!.id}/end`);
  await later(10);
  await server.sweep();
  expect(receiver.heard).toHaveLength(1);
  expect(server.errors).toEqual([]);
});
