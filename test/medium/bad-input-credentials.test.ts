import { randomBytes } from 'node:crypto';
import { newToken } from '#libs/platform/passwords/token';
import { LIMITS } from '#libs/platform/limits/limits';
import { complaintOf } from './access-support/complaint.js';
import { belongingsOf, type Known } from './access-support/belongings.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { routesOf } from './access-support/routes.js';
import { contentOf } from './access-support/tables.js';
import { openLink, signIn, Visitor } from './access-support/visitor.js';

let open: OpenApi;
let known: Known;
beforeAll(async () => {
  open = await openApi(['Heron']);
  known = await belongingsOf(open, open.roads[0]!);
}, 60_000);
afterAll(() => open.close());

const NAME = '__Host-cotyla';
const OPEN_TO_ALL = ['/api/health', '/api/sign-in', '/api/sign-out', '/api/links/open', '/api/join', '/api/first-run', '/api/demo-sign-ins', '/api/certificates', '/api/results-in/messages', '/api/results-in/fhir'];
/** Asked by programs with a key, not by people with a session: test/medium/fhir. */
const BY_KEY = ['/fhir/'];
const closed = () => routesOf(open.api).map((route) => route.split(' ') as ['GET' | 'POST', string]).filter(([, path]) => ![...OPEN_TO_ALL, ...BY_KEY].some((p) => path.startsWith(p)));
const filled = (path: string) => path.replace(':n', '0').replace(/:\w+/g, known.ids.order);

describe('without a session that stands', () => {
  const cookies: [string, string][] = [
    ['none', ''],
    ['an empty one', `${NAME}=`],
    ['a random one', `${NAME}=${newToken().token}`],
    ['one too short', `${NAME}=abc`],
    ['one too long', `${NAME}=${'a'.repeat(7000)}`],
    ['one that is no text', `${NAME}=%E0%A4%A`],
    ['one with a quote', `${NAME}="'; DROP TABLE session; --"`],
    ['one of another name', `cotyla=${newToken().token}`],
    ['a heap of separators', ';;;===;;;'],
    ['many of the same name', Array.from({ length: 50 }, () => `${NAME}=${newToken().token}`).join('; ')],
  ];

  it.each(cookies)('every closed route asks to sign in: cookie %s', async (_what, cookie) => {
    const before = await contentOf(open.owner);
    const visitor = new Visitor('nobody', open.url, cookie, newToken().token);
    for (const [method, path] of closed()) {
      const answer = await visitor.ask({ method, url: filled(path), ...(method === 'POST' ? { body: {} } : {}) });
      expect([path, complaintOf(answer, path).code, answer.status]).toEqual([path, 'NOT_SIGNED_IN', 401]);
    }
    expect(await contentOf(open.owner)).toEqual(before);
    expect(open.broken).toEqual([]);
  });

  it('a cookie of random bytes is one that is not known', async () => {
    for (let i = 0; i < 40; i++) {
      const bytes = randomBytes(1 + (i % 60)).toString('latin1').replace(/[^\x21-\x7e\x80-\xff]/g, '~');
      const answer = await new Visitor('nobody', open.url, `${NAME}=${bytes}`).get('/api/me');
      expect([bytes, complaintOf(answer, bytes).code]).toEqual([bytes, 'NOT_SIGNED_IN']);
    }
  });
});

describe('without the page’s own token', () => {
  it.each(['', 'x', newToken().token, 'ä', `${'a'.repeat(5000)}`])('nothing is changed: x-csrf “%.20s”', async (token) => {
    const hedda = await signIn(open.url, 'hedda@weirside.example');
    const before = await contentOf(open.owner);
    for (const [, path] of closed().filter(([method]) => method === 'POST')) {
      const answer = await hedda.ask({ method: 'POST', url: filled(path), body: {}, headers: { 'x-csrf': token } });
      expect([path, complaintOf(answer, path).code, answer.status]).toEqual([path, 'CSRF', 403]);
    }
    expect(await contentOf(open.owner)).toEqual(before);
  });

  it('somebody else’s token does not help', async () => {
    const [hedda, marit] = [await signIn(open.url, 'hedda@weirside.example'), await signIn(open.url, 'marit@weirside.example')];
    expect(complaintOf(await hedda.ask({ method: 'POST', url: '/api/practice/rooms', body: { name: 'X', kind: 'ward' }, headers: { 'x-csrf': marit.csrf } }), 'a room').code).toBe('CSRF');
  });
});

describe('an emailed link', () => {
  const open_ = (token: unknown) => new Visitor('nobody', open.url).post('/api/links/open', { token });

  it.each([newToken().token, 'a'.repeat(43), 'a'.repeat(100), `${'a'.repeat(42)}=`, '../../../../../../../etc/passwd', "' OR '1'='1' -- and more words"])('that is none opens nothing: %s', async (token) => {
    const before = await contentOf(open.owner);
    expect(complaintOf(await open_(token), token)).toMatchObject({ code: 'LINK_NOT_VALID' });
    expect(await contentOf(open.owner)).toEqual(before);
  });

  it('that has run out or was taken back opens nothing, and ends what it had opened', async () => {
    const owner = await openLink(open.url, 'the owner', known.ownerToken);
    expect((await owner.get('/api/owner')).status).toBe(200);
    await open.owner.query("UPDATE link SET revoked_at = now() WHERE kind = 'owner'");
    expect(complaintOf(await open_(known.ownerToken), 'taken back').code).toBe('LINK_NOT_VALID');
    expect(complaintOf(await owner.get('/api/owner'), 'taken back').code).toBe('NOT_SIGNED_IN');
    const reader = await openLink(open.url, 'the reader', known.readerToken);
    expect((await reader.get(`/api/reader/packages/${known.ids.package}`)).status).toBe(200);
    await open.owner.query("UPDATE link SET expires_at = now() - interval '1 second' WHERE kind = 'reader'");
    expect(complaintOf(await open_(known.readerToken), 'run out').code).toBe('LINK_NOT_VALID');
    expect(complaintOf(await reader.get(`/api/reader/packages/${known.ids.package}`), 'run out').code).toBe('NOT_SIGNED_IN');
  });

  it('is kept as a hash alone', async () => {
    const { rows } = await open.owner.query<{ all: string }>("SELECT string_agg(l::text, ' ') || (SELECT string_agg(s::text, ' ') FROM session s) AS all FROM link l");
    for (const token of [known.ownerToken, known.readerToken]) expect(rows[0]!.all).not.toContain(token);
  });

  it('cannot be guessed at without end', async () => {
    const tried: number[] = [];
    for (let i = 0; i <= LIMITS.link.points; i++) tried.push((await open_(newToken().token)).status);
    expect(new Set(tried)).toEqual(new Set([401, 429]));
    const answer = await open_(newToken().token);
    expect(complaintOf(answer, 'a guess').code).toBe('TOO_MANY');
    expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0);
  });
});

describe('a wrong password', () => {
  const signInAs = (email: string, password: string) => new Visitor('nobody', open.url).post('/api/sign-in', { email, password });

  it('is answered alike for a name that is known and one that is not', async () => {
    const [known_, unknown] = [await signInAs('ruan@weirside.example', 'a wrong one'), await signInAs('nobody@weirside.example', 'a wrong one')];
    expect(known_).toMatchObject({ status: 401, body: { code: 'WRONG_PASSWORD' } });
    expect(unknown.body).toEqual(known_.body);
  });

  it('is not tried without end: 429 with the seconds to wait, also for the right one', async () => {
    const statuses: number[] = [];
    for (let i = 0; i < LIMITS.signIn.points; i++) statuses.push((await signInAs('lio@weirside.example', `guess ${i}`)).status);
    expect(new Set(statuses)).toEqual(new Set([401]));
    for (const password of ['guess again', 'river-otter-7']) {
      const answer = await signInAs('LIO@weirside.example', password);
      expect(complaintOf(answer, 'a guess').code).toBe('TOO_MANY');
      expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0);
      expect(Number(answer.headers.get('retry-after'))).toBeLessThanOrEqual(LIMITS.signIn.duration);
    }
    // Others of the same practice, behind the same address, are not kept out by it.
    expect((await signInAs('brida@weirside.example', 'river-otter-7')).status).toBe(200);
  });
});
