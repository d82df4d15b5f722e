import { randomUUID } from 'node:crypto';
import { errorCodes } from '#libs/contracts/errors';
import { belongingsOf, nobodys, type Belongings, type Known } from './access-support/belongings.js';
import { bodies, type Sender } from './access-support/body-routes.js';
import { complaintOf } from './access-support/complaint.js';
import { mutationsOf } from './access-support/mutations.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { routesOf, type Route } from './access-support/routes.js';
import { sample, shapeOf } from './access-support/sample.js';
import { contentOf } from './access-support/tables.js';
import { openLink, signIn, type Visitor } from './access-support/visitor.js';

let open: OpenApi;
let known: Known;
let senders: Record<Sender, Visitor>;

/** Hedda may do everything here, so that nothing is refused for want of a role. */
beforeAll(async () => {
  open = await openApi(['Heron', 'Nettle']);
  known = await belongingsOf(open, open.roads.find((r) => r.dog.call === 'Heron')!);
  await open.everywhere((tx) => tx.staff.update({ where: { email: 'hedda@weirside.example' }, data: { roles: ['desk', 'nurse', 'radiographer', 'vet', 'manager'] }, select: { id: true } }));
  senders = {
    staff: await signIn(open.url, 'hedda@weirside.example'),
    owner: await openLink(open.url, 'the owner', known.ownerToken),
    reader: await openLink(open.url, 'the reader', known.readerToken),
    lead: await signIn(open.url, 'oda@basin.example'),
  };
}, 60_000);
afterAll(() => open.close());

const fill = (route: Route, ids: Belongings): string => route.split(' ')[1]!.replace(':action', 'namePayer').replace(':n', '0').replace(':serial', 'X').replace(/:(\w+)/g, (_, name: string) => String(ids[(name === 'sha' ? 'image' : name) as keyof Belongings] ?? randomUUID()));

it('every route that takes a body has a contract to be tried with', () => {
  expect(routesOf(open.api).filter((route) => route.startsWith('POST')).sort()).toEqual(Object.keys(bodies).sort());
});

describe('a field that is wrong, missing or too long is refused with a code and a sentence, and nothing changes', () => {
  for (const [route, takes] of Object.entries(bodies) as [Route, (typeof bodies)[keyof typeof bodies]][]) {
    if (typeof takes === 'string') continue;
    it(`at ${route}`, async () => {
      const url = fill(route, known.ids);
      const valid = sample(shapeOf(takes.takes), known.ids.person);
      const refused = mutationsOf(takes.takes, valid).filter((m) => m.refused);
      expect(refused.length).toBeGreaterThan(5);
      const before = await contentOf(open.owner);
      for (const { what, body } of refused) {
        const complaint = complaintOf(await senders[takes.from].ask({ method: 'POST', url, body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }), what);
        expect({ what, code: complaint.code }).toEqual({ what, code: 'BAD_INPUT' });
        for (const { message } of complaint.fields ?? []) expect(message).toBeTruthy();
      }
      expect(await contentOf(open.owner)).toEqual(before);
      expect(open.broken).toEqual([]);
    });
  }
});

describe('what is no JSON at all', () => {
  const wrong: [string, Record<string, string>, string][] = [
    ['half an object', { 'content-type': 'application/json' }, '{"name": '],
    ['nothing, though it says JSON', { 'content-type': 'application/json' }, ''],
    ['words', { 'content-type': 'application/json' }, 'name=Ada'],
    ['a form', { 'content-type': 'application/x-www-form-urlencoded' }, 'name=Ada'],
    ['XML', { 'content-type': 'application/xml' }, '<name>Ada</name>'],
    ['a prototype to poison', { 'content-type': 'application/json' }, '{"__proto__": {"roles": ["manager"]}}'],
    ['a constructor to poison', { 'content-type': 'application/json' }, '{"constructor": {"prototype": {}}}'],
  ];

  it.each(wrong)('%s is refused at every route', async (what, headers, body) => {
    const before = await contentOf(open.owner);
    for (const [route, takes] of Object.entries(bodies) as [Route, (typeof bodies)[keyof typeof bodies]][]) {
      if (typeof takes === 'string') continue;
      const answer = await senders[takes.from].ask({ method: 'POST', url: fill(route, known.ids), headers, body });
      expect([`${what} at ${route}`, complaintOf(answer, `${what} at ${route}`).code]).toEqual([`${what} at ${route}`, 'BAD_INPUT']);
    }
    expect(await contentOf(open.owner)).toEqual(before);
  });

  it('more than a megabyte is refused before it is read', async () => {
    const answer = await senders.staff.post('/api/people', { name: 'x'.repeat(1_100_000) });
    expect(complaintOf(answer, 'a long body').code).toBe('TOO_LARGE');
  });
});

describe('an id that is none or nobody’s', () => {
  const none = ['not-an-id', '1', "1'%20OR%20'1'='1", '%00', '..%2F..%2Fetc%2Fpasswd', '%E0%A4%A', 'x'.repeat(300), '00000000-0000-0000-0000-000000000000', '%F0%9F%90%95'];

  it('is answered as not there, at every route that names one', async () => {
    const before = await contentOf(open.owner);
    for (const route of routesOf(open.api).filter((r) => r.includes(' /api/') && r.includes(':') && !r.includes('certificates'))) {
      const [method, path] = route.split(' ') as ['GET' | 'POST', string];
      const takes = method === 'POST' ? bodies[route as keyof typeof bodies] : '';
      const filledIn = typeof takes === 'object' ? sample(shapeOf(takes.takes), known.ids.person) : undefined;
      const film = new FormData();
      film.append('image', new Blob(['x']), 'film.png');
      const body = path.endsWith('/images') ? film : path.includes(':action') ? { ...(filledIn as object), input: { payer: known.ids.person } } : filledIn;
      const who = senders[path.startsWith('/api/owner') ? 'owner' : path.startsWith('/api/reader') ? 'reader' : path.startsWith('/api/scheme') ? 'lead' : 'staff'];
      for (const id of [...none, randomUUID()]) {
        const url = fill(`${method} ${path.replace(/:(?!action|n\b)\w+/g, id)}` as Route, nobodys());
        const { code } = complaintOf(await who.ask({ method, url, ...(body === undefined ? {} : { body }) }), `${method} ${url}`);
        expect([url, code]).toEqual([url, /%E0%A4%A/.test(url) ? 'BAD_INPUT' : 'NOT_FOUND']);
      }
    }
    expect(await contentOf(open.owner)).toEqual(before);
    expect(open.broken).toEqual([]);
  }, 240_000);

  it.each(['', 'X', 'x'.repeat(99), '%00', "'--", '../../x'])('a certificate number “%s” is not there', async (serial) => {
    expect(complaintOf(await senders.staff.get(`/api/certificates/${encodeURIComponent(serial)}`), serial).code).toBe('NOT_FOUND');
  });

  it('is also not there as an action, a page or an address', async () => {
    const { order } = known.ids;
    for (const url of [`/api/orders/${order}/actions/explode`, `/api/orders/${order}/actions/toString`, `/api/orders/${order}/actions/__proto__`])
      expect(complaintOf(await senders.staff.post(url, { key: randomUUID(), on: order, input: {} }), url).code).toBe('NOT_FOUND');
    for (const url of ['/api', '/api/nothing', '/api/orders/x/y/z', '/nothing']) expect(complaintOf(await senders.staff.get(url), url).code).toBe('NOT_FOUND');
  });
});

describe('a question that is none', () => {
  const asked = ['/api/orders?page=0', '/api/orders?page=1e9', '/api/orders?show=everything', `/api/orders?q=${'x'.repeat(200)}`, '/api/orders?page=x&page=y', '/api/dogs?page=-1', `/api/dogs?q=${'x'.repeat(200)}`, '/api/dogs?q=a&q=b', '/api/people?page=NaN', '/api/dog-twins?page=0', '/api/waiting-list?page=1.5', '/api/unmatched?page=x', '/api/requests?page=-1', `/api/search?q=${'y'.repeat(101)}`, '/api/day-board?day=yesterday', '/api/day-sheet.pdf?day=x'];

  it.each(asked)('%s is refused with a sentence', async (url) => {
    expect(complaintOf(await senders.staff.get(url), url).code).toBe('BAD_INPUT');
  });

  it.each(['/api/day-board?day=2026-02-30', '/api/day-board?day=0000-00-00', '/api/day-sheet.pdf?day=2026-13-01'])('a day that does not exist is refused: %s', async (url) => {
    expect(complaintOf(await senders.staff.get(url), url).code).toBe('BAD_INPUT');
  });

  it.each(['%00', '%25', '%5C', "'", '%ED%A0%80', '(', '%F0%9F%90%95', '%', '_'])('odd signs are only looked for: %s', async (q) => {
    for (const page of ['orders', 'dogs', 'people', 'search']) expect([page, q, (await senders.staff.get(`/api/${page}?q=${q}`)).status < 500]).toEqual([page, q, true]);
    expect(open.broken).toEqual([]);
  });
});

describe('an order that has moved on', () => {
  const order = () => open.roads.find((r) => r.dog.call === 'Nettle')!;
  const ask = (action: string, version: number | undefined, input: unknown, on = order().order) => senders.staff.post(`/api/orders/${order().order}/actions/${action}`, { key: randomUUID(), version, on, input });

  it('refuses what was decided on an older look, and says what came in between', async () => {
    for (const version of [0, order().version - 1, order().version + 1, undefined]) {
      const before = await contentOf(open.owner);
      const complaint = complaintOf(await ask('namePayer', version, { payer: order().dog.person.id }), 'a stale version');
      expect(complaint.code).toBe('CHANGED_MEANWHILE');
      if (version === order().version - 1) expect(complaint.changed).toHaveLength(1);
      expect(await contentOf(open.owner)).toEqual(before);
    }
  });

  it('refuses what belongs to another step, with the reasons', async () => {
    const before = await contentOf(open.owner);
    const visit = order().visit;
    for (const [action, input, on] of [['sendHome', { with: 'Somebody' }, visit], ['startSedation', { plan: randomUUID() }, visit], ['releaseLetter', {}, Object.keys(order().evaluation.studies)[0]!], ['acceptReferral', {}, undefined]] as const) {
      const complaint = complaintOf(await ask(action, order().version, input, on), action);
      expect([action, ['HELD', 'NOT_AT_THIS_STEP'].includes(complaint.code)]).toEqual([action, true]);
      if (complaint.code === 'HELD') expect(complaint.because!.every((b) => b.words.includes(' '))).toBe(true);
    }
    expect(await contentOf(open.owner)).toEqual(before);
  });
});

it('every code has a status, of the server’s fault only where it is full, busy or broken, and a sentence', () => {
  const itsFault = new Set(['BROKEN', 'STORAGE_FULL', 'BUSY']);
  for (const [code, { status, says }] of Object.entries(errorCodes)) expect({ code, ok: (status < 500) === !itsFault.has(code) && says.endsWith('.') }).toEqual({ code, ok: true });
});
