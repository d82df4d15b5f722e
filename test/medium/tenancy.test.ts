import { cases } from './access-support/foreign-requests.js';
import { belongingsOf, nobodys, type Belongings, type Known } from './access-support/belongings.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { routesOf, type Route } from './access-support/routes.js';
import { contentOf } from './access-support/tables.js';
import { openLink, signIn, type Answer, type Visitor } from './access-support/visitor.js';
import { readPdf } from '#test/support/read-pdf';

let open: OpenApi;
let weirside: Known;
let karsby: Known;
let strangers: Visitor[];

beforeAll(async () => {
  open = await openApi(['Heron', 'Kestrel', 'Lichen']);
  const road = (dog: string) => open.roads.find((r) => r.dog.call === dog)!;
  weirside = await belongingsOf(open, road('Heron'));
  karsby = await belongingsOf(open, road('Kestrel'));
  strangers = [
    ...(await Promise.all(['pell', 'sanne', 'dag', 'mirre'].map((name) => signIn(open.url, `${name}@hillfoot.example`)))),
    await signIn(open.url, 'vera@sluicegreen.example'),
    await signIn(open.url, 'oda@basin.example'),
    await openLink(open.url, 'an owner of another practice', karsby.ownerToken),
    await openLink(open.url, 'a reader with the link of another package', karsby.readerToken),
  ];
}, 120_000);
afterAll(() => open.close());

/** The answer without the ids that were asked for, so that two of them can be laid side by side. */
function plain({ status, body, headers }: Answer, ids: Belongings): { status: number; body: string; type: string | null; cached: string | null } {
  const text = Object.values(ids).reduce((all, id) => all.replaceAll(id as string, 'ID'), JSON.stringify(body));
  return { status, body: text, type: headers.get('content-type'), cached: headers.get('cache-control') };
}

it('every route has a case', () => {
  expect(routesOf(open.api).sort()).toEqual(Object.keys(cases).sort());
});

describe('ids of another practice are answered as ids of nobody', () => {
  for (const [route, tried] of Object.entries(cases) as [Route, (typeof cases)[Route]][]) {
    if (!('asks' in tried)) continue;
    it(`at ${route}`, async () => {
      const before = await contentOf(open.owner);
      const statuses = new Set<number>();
      for (const stranger of strangers) {
        const nobody = nobodys();
        const theirs = tried.asks(weirside.ids, karsby.ids);
        const unknown = tried.asks(nobody, karsby.ids);
        for (const [i, request] of theirs.entries()) {
          const answer = plain(await stranger.ask(request), weirside.ids);
          expect({ who: stranger.name, url: request.url, ...answer }).toEqual({ who: stranger.name, url: request.url, ...plain(await stranger.ask(unknown[i]!), nobody) });
          expect(answer.status).toBeGreaterThanOrEqual(400);
          if (Object.values(weirside.ids).some((id) => request.url.includes(id as string))) statuses.add(answer.status);
        }
      }
      // Some are stopped by their role; the others, who would get in, do not find it.
      if (statuses.size > 0) expect([...statuses].filter((status) => status !== 403)).toEqual([404]);
      expect(await contentOf(open.owner)).toEqual(before);
      expect(open.broken).toEqual([]);
      // The route of all actions is tried with every one of them.
    }, 240_000);
  }
});

describe('lists', () => {
  const files = ['/api/dogs.csv', '/api/people.csv', '/api/dog-twins.csv', '/api/waiting-list.csv', '/api/unmatched.csv', '/api/requests/export.csv', '/api/mailbox.csv', '/api/centre-bills/export.csv', '/api/orders/results.csv', '/api/reader/packages/export.csv'];
  const urls = ['/api/day-board', '/api/orders?show=all', '/api/orders?show=all&q=Heron', '/api/orders/export.csv?show=all', '/api/search?q=Heron', '/api/breeds', '/api/dogs', '/api/dogs?q=Heron', '/api/people', '/api/people?q=Wist', '/api/practice', '/api/mailbox', '/api/fees?show=all', '/api/fees/export.csv?show=all', '/api/centre-bills', '/api/centre-bills/lines?show=all', '/api/centre-bills/lines.csv?show=all', '/api/centre-bills/unbilled', '/api/centre-bills/unbilled.csv', '/api/scheme', '/api/reader/packages', '/api/unmatched', '/api/practice/machines', '/api/practice/keys', '/api/practice/webhooks', '/api/practice/channels', '/api/owner', '/api/me', ...files];

  it('hold nothing of another practice, whoever looks', async () => {
    for (const stranger of strangers) {
      for (const url of [...urls, `/api/day-board?day=${weirside.day}`, `/api/search?q=${weirside.words.at(-2)!}`]) {
        const { status, body } = await stranger.get(url);
        const text = JSON.stringify(body);
        // The lead is told the number of an order that is overdue or went wrong, and no dog, person or id.
        const secret = url === '/api/scheme' ? weirside.words.filter((word) => word !== weirside.accession) : weirside.words;
        expect({ who: stranger.name, url, seen: secret.filter((word) => text.includes(word)) }).toEqual({ who: stranger.name, url, seen: [] });
        expect([200, 403, 404]).toContain(status);
      }
    }
  });

  it('show their own practice’s people what is theirs, so that the test above could have failed', async () => {
    const marit = await signIn(open.url, 'marit@weirside.example');
    for (const url of ['/api/orders?show=all', '/api/orders/export.csv?show=all', '/api/search?q=Heron', '/api/dogs', '/api/people', '/api/practice', '/api/fees?show=all', '/api/centre-bills', '/api/centre-bills/lines?show=all', `/api/day-board?day=${weirside.day}`, '/api/dogs.csv', '/api/people.csv', '/api/centre-bills/export.csv']) {
      const text = JSON.stringify((await marit.get(url)).body);
      expect({ url, seen: weirside.words.filter((word) => text.includes(word)).length }).not.toEqual({ url, seen: 0 });
    }
  });

  it('count the images without an order of their own practice alone', async () => {
    const waiting = async (email: string) => ((await (await signIn(open.url, email)).get('/api/day-board')).body as { unmatched: number }).unmatched;
    expect([await waiting('marit@weirside.example'), await waiting('pell@hillfoot.example')]).toEqual([1, 1]);
    const { rows } = await open.owner.query('SELECT 1 FROM received_image');
    expect(rows).toHaveLength(2);
  });

  it('hold nothing of another practice on paper either', async () => {
    const sheet = async (email: string) => {
      const { cookie } = await signIn(open.url, email);
      const paper = await fetch(`${open.url}/api/day-sheet.pdf?day=${weirside.day}`, { headers: { cookie } });
      return (await readPdf(new Uint8Array(await paper.arrayBuffer()))).text;
    };
    expect(await sheet('marit@weirside.example')).toContain('Heron');
    expect(await sheet('pell@hillfoot.example')).not.toContain('Heron');
  });

  it('of a reader hold the packages of the own centre, and of a link the one package', async () => {
    const rows = async (who: Visitor) => ((await who.get('/api/reader/packages')).body as { rows: { package: string }[] }).rows.map((r) => r.package);
    expect(await rows(strangers.find((s) => s.name.startsWith('vera'))!)).toEqual([]);
    expect(await rows(strangers.at(-1)!)).toEqual([karsby.ids.package]);
    expect(await rows(await signIn(open.url, 'noemi@threnfold.example'))).toEqual(expect.arrayContaining([weirside.ids.package, karsby.ids.package]));
  });
});

describe('the register of one practice', () => {
  it('takes additions without touching another’s', async () => {
    const before = await contentOf(open.owner, { practice: weirside.practice });
    const [pell, , , mirre] = strangers as [Visitor, Visitor, Visitor, Visitor];
    const added = [
      await pell.post('/api/people', { name: 'Ada Wist', email: 'ada@sluice.example' }),
      await pell.post('/api/practice/staff', { name: 'Jorun Maal', email: 'jorun@hillfoot.example', roles: ['nurse'], password: 'a long enough one' }),
      await pell.post('/api/practice/rooms', { name: 'Room 1', kind: 'xray' }),
      await pell.post('/api/practice/equipment', { name: 'X-ray table 1', kind: 'xray', checkedUntil: '2027-12-01' }),
      await mirre.post('/api/practice/texts', { kind: 'advice', title: 'Grown dogs', body: 'Bring the papers of your dog and a blanket.' }),
      await pell.post('/api/practice/prices', { currency: 'ALM', taxPercent: 10, sedationMinor: 1, radiographMinor: 1, sendingMinor: 1 }),
      await pell.post('/api/practice/centres', { name: 'Readers of Long Reach', place: 'Long Reach', email: 'films@longreach.example', zone: 'Europe/Vienna', protocols: ['elbow'] }),
    ];
    expect(added.map((a) => a.status)).toEqual([201, 200, 200, 200, 200, 200, 200]);
    expect(await contentOf(open.owner, { practice: weirside.practice })).toEqual(before);
  });

  it('takes a dog with the number of a dog that another practice knows, and says nothing of it', async () => {
    const transponder = open.roads.find((r) => r.dog.call === 'Heron')!.dog.transponder;
    const { status, body } = await strangers[0]!.post('/api/dogs', {
      name: 'Moor of Nowhere', breed: 'Karsby Spitz', sex: 'male', birth: { earliest: '2025-01-03', latest: '2025-01-03', precision: 'day' }, identifier: { kind: 'transponder', value: transponder, how: 'scanned' }, owner: { person: karsby.ids.person },
    });
    expect(status).toBe(201);
    expect(JSON.stringify(body)).not.toContain('Heron');
  });
});

describe('a reading centre', () => {
  const reader = { name: 'Planted Person', email: 'planted@nowhere.example' };

  it('to which several practices send gets no reader from one of them, who would see what the others sent', async () => {
    const { rows } = await open.owner.query<{ id: string }>('SELECT centre_id AS id FROM package_access');
    const before = await contentOf(open.owner);
    expect(await strangers[0]!.post(`/api/practice/centres/${rows[0]!.id}/readers`, reader)).toMatchObject({ status: 403, body: { code: 'NOT_YOUR_ROLE' } });
    expect(await contentOf(open.owner)).toEqual(before);
  });

  it('gets its readers from the practice that registered it', async () => {
    const { body } = await strangers[0]!.post('/api/practice/centres', { name: 'Readers of the Net Loft', place: 'Sorn', email: 'films@netloft.example', zone: 'Europe/Vienna', protocols: ['elbow'] });
    const centre = (body as { centres: { id: string; name: string }[] }).centres.find((c) => c.name === 'Readers of the Net Loft')!;
    const hedda = await signIn(open.url, 'hedda@weirside.example');
    expect((await hedda.post(`/api/practice/centres/${centre.id}/readers`, reader)).status).toBe(403);
    expect((await strangers[0]!.post(`/api/practice/centres/${centre.id}/readers`, reader)).status).toBe(200);
  });
});
