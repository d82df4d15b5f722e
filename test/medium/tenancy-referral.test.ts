import { randomUUID } from 'node:crypto';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { signIn, type Visitor } from './access-support/visitor.js';

let open: OpenApi;
let desks: Record<'home' | 'asked' | 'third', Visitor>;
let order: string;
let dog: string;

// Mallow of Sorn Quay needs a study that only an accredited practice takes; Weirside is asked.
beforeAll(async () => {
  open = await openApi(['Mallow', 'Nettle']);
  const road = open.roads.find((r) => r.dog.call === 'Mallow')!;
  [order, dog] = [road.order, road.dog.id];
  const [home, asked, third] = await Promise.all([signIn(open.url, 'ebba@sornquay.example'), signIn(open.url, 'marit@weirside.example'), signIn(open.url, 'pell@hillfoot.example')]);
  desks = { home, asked, third };
}, 60_000);
afterAll(() => open.close());

const read = async (who: Visitor) => (await who.get(`/api/orders/${order}`)).body as OrderScreen;
const listed = async (who: Visitor) => ((await who.get('/api/orders?show=all')).body as { rows: { id: string }[] }).rows.some((row) => row.id === order);

describe('an order that was referred', () => {
  it('is seen by the practice it belongs to and by the one that was asked', async () => {
    expect((await read(desks.home)).dog.name).toContain('Mallow');
    expect((await read(desks.asked)).dog.name).toContain('Mallow');
    expect([await listed(desks.home), await listed(desks.asked)]).toEqual([true, true]);
  });

  it('is not there for a third', async () => {
    expect((await desks.third.get(`/api/orders/${order}`)).status).toBe(404);
    expect((await desks.third.get(`/api/dogs/${dog}`)).status).toBe(404);
    expect(await listed(desks.third)).toBe(false);
  });

  it('opens that one dog to the practice that was asked, and no other of the same register', async () => {
    const other = open.roads.find((r) => r.dog.call === 'Nettle')!;
    expect((await desks.home.get(`/api/orders/${other.order}`)).status).toBe(404);
    expect((await desks.home.get(`/api/dogs/${other.dog.id}`)).status).toBe(404);
    const { rows } = await open.everywhere((tx) => tx.orderAccess.findMany({ where: { orderId: other.order } })).then((all) => ({ rows: all.map((a) => a.practiceId) }));
    expect(rows).toEqual([other.house.id]);
  });

  it('is found with its dog by name, with a slip, and by its owner’s phone, in both practices and in no third', async () => {
    const { rows: [known] } = await open.owner.query<{ name: string; phone: string; number: string }>(
      'SELECT p.name, p.phone, i.value AS number FROM dog_role r JOIN person p ON p.id = r.person_id JOIN dog_identifier i ON i.dog_id = r.dog_id WHERE r.dog_id = $1 AND r.valid_until IS NULL', [dog]);
    const found = async (who: Visitor, q: string) => ((await who.get(`/api/search?q=${encodeURIComponent(q)}`)).body as { dogs: { id: string }[] }).dogs.map((d) => d.id);
    for (const q of ['Mallow', 'Malow', known!.name, known!.phone, known!.number.slice(-6)]) {
      expect([q, (await found(desks.home, q)).includes(dog), (await found(desks.asked, q)).includes(dog), (await found(desks.third, q)).includes(dog)]).toEqual([q, true, true, false]);
    }
  });

  it('is answered by the practice that was asked, and both see the answer', async () => {
    const screen = await read(desks.asked);
    const { status, body } = await desks.asked.post(`/api/orders/${order}/actions/acceptReferral`, { key: randomUUID(), version: screen.version, on: order, input: {} });
    expect({ status, body: status === 200 ? '' : body }).toEqual({ status: 200, body: '' });
    for (const who of [desks.home, desks.asked]) expect((await read(who)).happened.map((h) => h.what)).toContain('Referral accepted');
    expect((await desks.third.get(`/api/orders/${order}`)).status).toBe(404);
  });

  it('leaves the dog’s register with the practice that keeps it', async () => {
    const { status } = await desks.asked.post(`/api/dogs/${dog}/names`, { name: 'Another name', from: '2026-01-02' });
    expect([403, 404, 422]).toContain(status);
    expect(JSON.stringify((await desks.home.get(`/api/dogs/${dog}`)).body)).not.toContain('Another name');
  });
});
