import { randomUUID } from 'node:crypto';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { belongingsOf, type Known } from './access-support/belongings.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { openLink, signIn, Visitor, type Answer } from './access-support/visitor.js';

let open: OpenApi;
let known: Known;
beforeAll(async () => {
  open = await openApi(['Heron', 'Nettle']);
  known = await belongingsOf(open, open.roads.find((r) => r.dog.call === 'Heron')!);
}, 60_000);
afterAll(() => open.close());

const code = ({ body }: Answer): string | undefined => (body as { code?: string }).code;
const one = async <T>(sql: string, values: unknown[] = []): Promise<T> => (await open.owner.query(sql, values)).rows[0] as T;

describe('a password', () => {
  it('is kept as an argon2id hash with a salt of its own', async () => {
    const hedda = await signIn(open.url, 'hedda@weirside.example');
    for (const [name, email] of [['Ane Rusk', 'ane@weirside.example'], ['Ove Rusk', 'ove@weirside.example']]) expect((await hedda.post('/api/practice/staff', { name, email, roles: ['nurse'], password: 'one and the same' })).status).toBe(200);
    const { rows } = await open.owner.query<{ hash: string }>("SELECT password_hash AS hash FROM staff WHERE email IN ('ane@weirside.example', 'ove@weirside.example')");
    for (const { hash } of rows) expect(hash).toMatch(/^\$argon2id\$v=19\$m=\d{5,},t=\d+,p=\d+\$[\w+/]{20,}\$[\w+/]{40,}$/);
    expect(new Set(rows.map((r) => r.hash)).size).toBe(2);
    expect((await signIn(open.url, 'ane@weirside.example', 'one and the same')).cookie).toContain('=');
  });

  it('is in no answer of the api', async () => {
    const hedda = await signIn(open.url, 'hedda@weirside.example');
    for (const url of ['/api/me', '/api/practice', '/api/people']) expect(JSON.stringify((await hedda.get(url)).body)).not.toMatch(/argon2|passwordHash|password_hash/);
  });
});

describe('a session', () => {
  it('is a cookie that scripts and other sites do not get at, over https alone, and that ends', async () => {
    const { headers } = await new Visitor('Marit', open.url).post('/api/sign-in', { email: 'marit@weirside.example', password: 'river-otter-7' });
    const cookie = headers.getSetCookie().at(-1)!;
    const [pair, ...flags] = cookie.split('; ');
    expect(pair).toMatch(/^__Host-cotyla=[\w-]{43}$/);
    expect(flags).toEqual(expect.arrayContaining(['Path=/', 'HttpOnly', 'Secure', 'SameSite=Lax']));
    const expires = new Date(flags.find((f) => f.startsWith('Expires='))!.slice(8)).getTime();
    expect(expires).toBeGreaterThan(Date.now());
    expect(expires).toBeLessThan(Date.now() + 24 * 3_600_000);
    expect(flags.some((f) => f.startsWith('Domain'))).toBe(false);
  });

  it('is kept as a hash alone', async () => {
    const { cookie } = await signIn(open.url, 'marit@weirside.example');
    const { all } = await one<{ all: string }>("SELECT string_agg(s::text, ' ') AS all FROM session s");
    expect(all).not.toContain(cookie.split('=')[1]!);
  });

  it('is a new one at every sign-in, so that nobody plants one beforehand', async () => {
    const planted = await signIn(open.url, 'marit@weirside.example');
    const answer = await planted.post('/api/sign-in', { email: 'hedda@weirside.example', password: 'river-otter-7' });
    const now = answer.headers.getSetCookie().at(-1)!.split(';')[0]!;
    expect(now).not.toBe(planted.cookie);
    expect((await planted.get('/api/me')).status).toBe(401);
  });

  it('ends when the person signs out, at the server too', async () => {
    const marit = await signIn(open.url, 'marit@weirside.example');
    const { headers } = await marit.post('/api/sign-out');
    expect(headers.getSetCookie().at(-1)).toMatch(/^__Host-cotyla=;/);
    expect(await marit.get('/api/me')).toMatchObject({ status: 401, body: { code: 'NOT_SIGNED_IN' } });
  });

  it('ends when its time has come', async () => {
    const marit = await signIn(open.url, 'marit@weirside.example');
    await open.owner.query('UPDATE session SET expires_at = now()');
    expect((await marit.get('/api/me')).status).toBe(401);
    expect((await marit.get('/api/orders')).status).toBe(401);
  });

  it('ends when the person no longer works there', async () => {
    const marit = await signIn(open.url, 'marit@weirside.example');
    await open.owner.query("UPDATE staff SET active = false WHERE email = 'marit@weirside.example'");
    expect((await marit.get('/api/orders')).status).toBe(401);
    await expect(signIn(open.url, 'marit@weirside.example')).rejects.toThrow('WRONG_PASSWORD');
    await open.owner.query("UPDATE staff SET active = true WHERE email = 'marit@weirside.example'");
  });

  it('does what the person’s roles allow now, not at the time of signing in', async () => {
    const hedda = await signIn(open.url, 'hedda@weirside.example');
    await open.owner.query("UPDATE staff SET roles = '{desk}' WHERE email = 'hedda@weirside.example'");
    expect(code(await hedda.post('/api/practice/rooms', { name: 'Room 9', kind: 'ward' }))).toBe('NOT_YOUR_ROLE');
    await open.owner.query("UPDATE staff SET roles = '{manager}' WHERE email = 'hedda@weirside.example'");
    expect((await hedda.post('/api/practice/rooms', { name: 'Room 9', kind: 'ward' })).status).toBe(200);
  });

  it('opened by a link goes no further than its order or package', async () => {
    const [owner, reader] = [await openLink(open.url, 'owner', known.ownerToken), await openLink(open.url, 'reader', known.readerToken)];
    for (const url of ['/api/orders', `/api/orders/${known.ids.order}`, '/api/dogs', '/api/people', '/api/practice', '/api/day-board', '/api/scheme']) {
      expect([url, (await owner.get(url)).status, (await reader.get(url)).status]).toEqual([url, 404, 404]);
    }
    expect([(await owner.get('/api/reader/packages')).status, (await reader.get('/api/owner')).status]).toEqual([404, 404]);
  });
});

describe('roles', () => {
  const vetsAlone: [string, (s: OrderScreen) => string, unknown][] = [
    ['signPlan', (s) => s.visits[0]!.id, { kind: 'first', vetPresent: true, weightKg: 20, drugs: [{ drug: 'Example (invented)', route: 'as the vet decides', dose: 1, doseUnit: 'mg/kg', concentration: 100, concentrationUnit: 'mg/mL', resolutionMl: 0.01 }] }],
    ['examine', (s) => s.visits[0]!.id, { statusClass: 1 }],
    ['judgeAnswers', (s) => s.visits[0]!.id, { go: true, why: 'Looked at it.' }],
    ['releaseLetter', (s) => s.studies[0]!.id, {}],
  ];

  it.each(vetsAlone)('the desk, a nurse, a radiographer and the manager do not %s', async (action, on, input) => {
    const { order } = open.roads.find((r) => r.dog.call === 'Nettle')!;
    const facts = await one<{ n: string }>('SELECT count(*) AS n FROM fact');
    for (const name of ['marit', 'lio', 'sef', 'hedda']) {
      const who = await signIn(open.url, `${name}@weirside.example`);
      const screen = (await who.get(`/api/orders/${order}`)).body as OrderScreen;
      const answer = await who.post(`/api/orders/${order}/actions/${action}`, { key: randomUUID(), version: screen.version, on: on(screen), input });
      expect([name, answer.status, code(answer)]).toEqual([name, 403, 'NOT_YOUR_ROLE']);
    }
    expect(await one('SELECT count(*) AS n FROM fact')).toEqual(facts);
  });

  it.each([['rooms', { name: 'X', kind: 'ward' }], ['staff', { name: 'X Y', email: 'xy@weirside.example', roles: ['desk'], password: 'a long enough one' }], ['prices', { currency: 'ALM', taxPercent: 1, sedationMinor: 1, radiographMinor: 1, sendingMinor: 1 }]])('only the manager changes the practice: %s', async (what, body) => {
    for (const name of ['marit', 'lio', 'sef', 'ruan']) expect(code(await (await signIn(open.url, `${name}@weirside.example`)).post(`/api/practice/${what}`, body))).toBe('NOT_YOUR_ROLE');
  });

  it('nobody takes on the scheme’s role or a reader’s inside a practice', async () => {
    const hedda = await signIn(open.url, 'hedda@weirside.example');
    for (const role of ['lead', 'reader']) {
      const answer = await hedda.post('/api/practice/staff', { name: 'X Y', email: `${role}@weirside.example`, roles: [role], password: 'a long enough one' });
      expect([role, answer.status]).toEqual([role, 400]);
    }
  });

  it('the scheme’s lead sees numbers and causes, no dog and no owner', async () => {
    const lead = await signIn(open.url, 'oda@basin.example');
    const text = JSON.stringify((await lead.get('/api/scheme')).body);
    for (const word of ['Heron', known.words.at(-3)!, known.words.at(-2)!]) expect(text).not.toContain(word);
    expect((await lead.get(`/api/orders/${known.ids.order}`)).status).toBe(404);
  });
});

describe('the audit', () => {
  const last = (order: string | null, action: string) => one<{ by: string; role: string; practice: string } | undefined>('SELECT by, role, practice_id AS practice FROM audit WHERE order_id IS NOT DISTINCT FROM $1 AND action = $2 ORDER BY id DESC LIMIT 1', [order, action]);
  const count = async () => Number((await one<{ n: string }>('SELECT count(*) AS n FROM audit')).n);

  it.each(['/api/orders', '/api/dogs', '/api/people', '/api/search?q=Heron', '/api/day-board', '/api/practice', '/api/dogs.csv', '/api/people.csv', '/api/orders/export.csv'])('has a row for every look at a list with people in it: %s', async (url) => {
    const marit = await signIn(open.url, 'marit@weirside.example');
    const before = await count();
    expect((await marit.get(url)).status).toBe(200);
    expect(await count()).toBe(before + 1);
  });

  it('says who looked at an order, a dog, a film and a paper', async () => {
    const marit = await signIn(open.url, 'marit@weirside.example');
    const { id } = (await marit.get('/api/me')).body as { id: string };
    const { order, dog, image, document } = known.ids;
    for (const url of [`/api/orders/${order}`, `/api/dogs/${dog}`, `/api/orders/${order}/images/${image}/file`, `/api/orders/${order}/documents/${document}`]) {
      const before = await count();
      expect([url, (await marit.get(url)).status]).toEqual([url, 200]);
      expect([url, await count()]).toEqual([url, before + 1]);
      expect(await one('SELECT by, practice_id AS practice FROM audit ORDER BY id DESC LIMIT 1')).toEqual({ by: id, practice: known.practice });
    }
    expect(await last(order, 'view')).toMatchObject({ by: id, role: 'desk' });
  });

  it('says that the owner and the reader looked', async () => {
    await (await openLink(open.url, 'owner', known.ownerToken)).get('/api/owner');
    expect(await last(known.ids.order, 'view')).toMatchObject({ by: known.ids.person, role: 'owner' });
    const before = await count();
    await (await signIn(open.url, 'noemi@threnfold.example')).get(`/api/reader/packages/${known.ids.package}`);
    expect(await count()).toBe(before + 1);
  });

  it('has a row for every change, in the transaction of the change', async () => {
    const marit = await signIn(open.url, 'marit@weirside.example');
    const { order, dog } = open.roads.find((r) => r.dog.call === 'Nettle')!;
    const screen = (await marit.get(`/api/orders/${order}`)).body as OrderScreen;
    const key = randomUUID();
    expect((await marit.post(`/api/orders/${order}/actions/namePayer`, { key, version: screen.version, on: order, input: { payer: dog.person.id } })).status).toBe(200);
    const row = await one<{ detail: { facts: { id: string; type: string }[] } }>("SELECT detail FROM audit WHERE order_id = $1 AND action = 'namePayer'", [order]);
    expect(row.detail.facts).toEqual([{ id: key, type: 'payerNamed' }]);
  });
});
