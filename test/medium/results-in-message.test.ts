import { randomUUID } from 'node:crypto';
import type { DeliveryAnswer, KeyMade, ResultsInScreen } from '#libs/contracts/results-in';
import { lead } from '#seed/practices';
import { example, CentreComputer, packageOf } from '#test/support/results-in';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { accept, dispatch } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
let scheme: Session;
let computer: CentreComputer;
let other: CentreComputer;
let road: Road;
let number: string;
beforeAll(async () => {
  server = await startServer();
  scheme = await server.as(lead.name);
  computer = await CentreComputer.of(server, scheme, server.scheme.centres.threnfold.id);
  other = await CentreComputer.of(server, scheme, server.scheme.centres.sluiceGreen.id);
  road = await sent('Gale');
  number = await packageOf(road, 'hipLaxity');
}, 90_000);
afterAll(async () => { await server.close(); });
afterEach(() => expect(server.errors.splice(0)).toEqual([]));

async function sent(dog: string): Promise<Road> {
  const on = await Road.book(server, { dog, studies: [['hipLaxity', 'threnfold']], inDays: 1 });
  await throughTheVisit(on);
  await (await dispatch(on, on.study().id)).acknowledge();
  return on;
}

const message = (...readings: object[]) => ({ format: 'cotyla-results-1', readings });
/** Invented values. */
const reading = (left: number, more: object = {}) => ({ package: number, number: 'R-1', readBy: 'Noemi Haskel', joints: { left: { value: left }, right: { value: 0.44 } }, ...more });
const facts = () => server.look((tx) => tx.fact.count());
const refusals = () => server.look((tx) => tx.audit.findMany({ where: { action: 'refuseMessage' }, orderBy: { id: 'asc' } }));
const tray = async (who: Session, as = '') => (await who.read<ResultsInScreen>(`/api/results-in${as}`)).left.rows;

describe('a message that nobody at the centre signed', () => {
  const tries: [string, (now: string, stale: string) => Parameters<CentreComputer['send']>[1], string][] = [
    ['with another secret', () => ({ secret: 'x'.repeat(43) }), 'signature'],
    ['whose body was changed on the way', () => ({ sent: { body: JSON.stringify(message(reading(0.12))) } }), 'signature'],
    ['under another idempotency key than it was signed with', () => ({ sent: { key: randomUUID() } }), 'signature'],
    ['with another time than it was signed at', (now) => ({ sent: { time: String(Number(now) + 1) } }), 'signature'],
    ['more than five minutes old', (_, stale) => ({ time: stale }), 'time'],
    ['from more than five minutes to come', (now) => ({ time: String(Number(now) + 302) }), 'time'],
    ['without a signature', () => ({ sent: { signature: '' } }), 'form'],
    ['with a signature of another kind', () => ({ sent: { signature: 'v2=abc' } }), 'form'],
  ];
  it.each(tries)('%s is refused, changes nothing, and is in the audit', async (_, how, why) => {
    const before = [await facts(), (await refusals()).length];
    const answer = await computer.send(message(reading(0.38)), how(computer.now, String(Number(computer.now) - 301)));
    expect(answer.status).toBe(401);
    expect(answer.body).toMatchObject({ code: 'SIGNATURE_REFUSED', message: expect.stringContaining('Nothing was changed.') });
    expect(await facts()).toBe(before[0]);
    const noted = await refusals();
    expect(noted).toHaveLength(before[1]! + 1);
    expect(noted.at(-1)).toMatchObject({ by: computer.made.key, role: 'centre', detail: { why } });
    expect(await server.look((tx) => tx.resultDelivery.count())).toBe(0);
  });

  it('a key that is none is answered as a wrong signature is', async () => {
    const answer = await new CentreComputer(server, { ...computer.made, key: randomUUID() }).send(message(reading(0.38)));
    expect([answer.status, answer.body]).toEqual([401, expect.objectContaining({ code: 'SIGNATURE_REFUSED' })]);
    expect((await refusals()).at(-1)).toMatchObject({ by: 'unknown' });
  });

  it('is shown beside the centre’s key', async () => {
    const { keys } = await scheme.read<ResultsInScreen>('/api/results-in?as=lead');
    expect(keys!.rows.find((k) => k.id === computer.made.key)).toMatchObject({ centre: 'Reading centre, Threnfold', lastUsedAt: null, lastRefusedAt: expect.stringMatching(/Z$/) });
  });
});

describe('a signed message', () => {
  it('without a key of its own, or too large, is refused and told what is wanted', async () => {
    expect((await computer.send(message(reading(0.38)), { key: 'short' })).body).toMatchObject({ code: 'BAD_INPUT', message: expect.stringContaining('idempotency-key') });
    const large = await computer.send(message(reading(0.38, { comment: 'x'.repeat(300_000) })));
    expect([large.status, large.body]).toEqual([413, expect.objectContaining({ code: 'TOO_LARGE' })]);
    expect(await server.look((tx) => tx.resultDelivery.count())).toBe(0);
  });

  it('that cannot be read is answered, and waits for a person', async () => {
    for (const body of ['{"format":', '[]', '{}', { format: 'another', readings: [reading(0.38)] }, message()]) {
      const answer = await computer.send(body);
      // What is no JSON at all does not reach the signature.
      if (body === '{"format":') expect(answer.status).toBe(400);
      else expect([answer.status, (answer.body as DeliveryAnswer).readings]).toEqual([422, [expect.objectContaining({ outcome: 'notTaken', words: expect.stringContaining('cotyla-results-1') })]]);
    }
    expect(await tray(scheme)).toHaveLength(4);
    for (const left of await tray(scheme)) await scheme.send(`/api/results-in/left/${left.id}/set-aside`, { why: 'A test of the centre’s.' });
    expect(await tray(scheme)).toEqual([]);
  });

  it.each([
    ['of a package that there is none of', () => reading(0.38, { package: 'P-00000000' }), 'Nothing under package P-00000000 was sent to this centre.'],
    ['of an order that there is none of', () => reading(0.38, { package: undefined, order: 'WS26-99998-7' }), /order number|does not fit|Nothing under order/],
    ['that names the dog alone', () => reading(0.38, { package: undefined, dogNumber: road.dog.transponder }), 'Name the package (P-…) or the order number.'],
    ['of another study than was sent', () => reading(0.38, { study: 'elbow' }), 'the reading says “elbow”'],
    ['of a film that was not sent', () => reading(0.38, { film: 'a'.repeat(64) }), 'This film is not in what was sent'],
    ['with a value that cannot be', () => reading(2.4), '2.4 is outside 0.00 to 2.00'],
    ['with more decimals than are read', () => reading(0.381), '0.381 has more than 2 decimals'],
    ['with one hip left out', () => reading(0.38, { joints: { left: { value: 0.38 } } }), 'Right hip: give a value, or the reason why there is none.'],
    ['with a value and a reason', () => reading(0.38, { joints: { left: { value: 0.38, reason: 'position' }, right: { value: 0.44 } } }), 'never both'],
    ['with a reason of no study', () => reading(0.38, { joints: { left: { reason: 'tired' }, right: { value: 0.44 } } }), '“tired” is no reason of this protocol.'],
    ['with a field that is not known', () => reading(0.38, { total: 3 }), '“total” is not known here'],
    ['read by nobody', () => reading(0.38, { readBy: undefined }), 'Read by: Say who read the films.'],
    ['read on a day to come', () => reading(0.38, { readOn: '2199-01-01' }), 'is still to come'],
  ])('%s goes nowhere silently: the answer says so, nothing is changed, and it waits for a person', async (_, of, words) => {
    const before = await facts();
    const answer = await computer.send(message(of()));
    expect(answer.status).toBe(422);
    const [row] = (answer.body as DeliveryAnswer).readings;
    expect(row).toMatchObject({ place: 1, outcome: 'notTaken', words: typeof words === 'string' ? expect.stringContaining(words) : expect.stringMatching(words) });
    expect(await facts()).toBe(before);
    const [left, ...more] = await tray(scheme);
    expect([left, more]).toMatchObject([{ centre: 'Reading centre, Threnfold', words: row!.words }, []]);
    await scheme.send('/api/me/language', { language: 'de' });
    const [german] = await tray(scheme);
    expect([german!.words, /\b(the|this|that|with|and|send|is|of)\b/i.test(german!.words)]).toEqual([expect.stringMatching(/\.$/), false]);
    await scheme.send('/api/me/language', { language: 'en' });
    await scheme.send(`/api/results-in/left/${left!.id}/set-aside`, { why: 'The centre was asked.' });
  });

  it('of an order that was sent to another centre tells no more than one of no order', async () => {
    const words = async (named: object) => ((await other.send(message(reading(0.38, named)))).body as DeliveryAnswer).readings[0]!.words;
    expect(await words({})).toBe((await words({ package: 'P-00000000' })).replace('P-00000000', number));
    expect(await words({ package: undefined, order: road.screen.accession })).toBe(`Nothing under order ${road.screen.accession} was sent to this centre. Compare the number with the films, then send the reading again.`);
    // Who reads at that centre sees it; the practice, whose order it may or may not be, does not.
    expect(await tray(await server.as('Vera Castine'))).toHaveLength(3);
    expect(await tray(await server.as('Noemi Haskel'))).toEqual([]);
    expect(await tray(await road.as('desk'))).toEqual([]);
    for (const left of await tray(scheme)) await scheme.send(`/api/results-in/left/${left.id}/set-aside`, { why: 'Not theirs.' });
  });

  it('waits page by page, the oldest first and each once, for the lead and for the practice', async () => {
    await computer.send(message(...Array.from({ length: 100 }, (_, i) => reading(2.4, { number: `A-${i}` }))));
    await computer.send(message(...Array.from({ length: 4 }, (_, i) => reading(2.4, { number: `B-${i}` }))));
    for (const [who, as] of [[scheme, 'as=lead&'], [await road.as('desk'), '']] as const) {
      const pages = await Promise.all([1, 2, 3, 4].map(async (page) => (await who.read<ResultsInScreen>(`/api/results-in?${as}page=${page}`)).left));
      expect(pages.map((p) => [p.rows.length, p.more])).toEqual([[50, true], [50, true], [4, false], [0, false]]);
      const all = pages.flatMap((p) => p.rows);
      expect(new Set(all.map((l) => l.id)).size).toBe(104);
      expect(all.map((l) => l.said.find((s) => s.what === 'number')!.words.slice(0, 1)).join('')).toBe('A'.repeat(100) + 'B'.repeat(4));
    }
    expect((await scheme.get('/api/results-in?page=0')).status).toBe(400);
    for (let left = await tray(scheme); left.length > 0; left = await tray(scheme)) for (const { id } of left) await scheme.send(`/api/results-in/left/${id}/set-aside`, { why: 'A test of the centre’s.' });
  });

  it('about a package of this centre that cannot be meant is seen at the practice, which sets it aside once', async () => {
    await computer.send(message(reading(2.4)));
    const [left] = await tray(await road.as('desk'));
    expect(left).toMatchObject({ order: { id: road.id, accession: road.screen.accession }, said: expect.arrayContaining([{ what: 'package', words: number }]) });
    expect(await tray(await server.as('Pell Vantry'))).toEqual([]);
    expect((await (await server.as('Pell Vantry')).post(`/api/results-in/left/${left!.id}/set-aside`, { why: 'Mine?' })).status).toBe(404);
    await (await road.as('vet')).send(`/api/results-in/left/${left!.id}/set-aside`, { why: 'The centre sends it again.' });
    expect((await (await road.as('desk')).post(`/api/results-in/left/${left!.id}/set-aside`, { why: 'Once more.' })).status).toBe(404);
  });

  it('is taken once, however often it comes, and is answered alike', async () => {
    const key = randomUUID();
    const first = await computer.send(message(reading(0.38)), { key });
    expect([first.status, (first.body as DeliveryAnswer).readings]).toEqual([200, [{ place: 1, number: 'R-1', outcome: 'taken', words: expect.stringContaining('veterinarian'), asks: [] }]]);
    const before = await facts();
    const again = await computer.send(message(reading(0.38)), { key });
    expect([again.status, again.body]).toEqual([200, first.body]);
    const anew = await computer.send(message(reading(0.38)));
    expect((anew.body as DeliveryAnswer).readings[0]).toMatchObject({ outcome: 'alreadyThere' });
    expect((await computer.send(message(reading(0.39)), { key })).body).toMatchObject({ code: 'ALREADY_THERE', message: expect.stringContaining('idempotency key') });
    expect(await facts()).toBe(before);
  });

  it('that is copied off the line and sent once more is refused, and in the audit', async () => {
    const [key, time] = [randomUUID(), computer.now];
    expect((await computer.send(message(reading(0.38)), { key, time })).status).toBe(200);
    const copy = await computer.send(message(reading(0.38)), { key, time });
    expect([copy.status, copy.body]).toEqual([409, expect.objectContaining({ code: 'REPLAYED' })]);
    expect((await refusals()).at(-1)).toMatchObject({ by: computer.made.key, detail: { why: 'replay' } });
  });

  it('waits for the vet like a reading of the reader’s page, with who read it', async () => {
    await road.look('vet');
    expect(road.study()).toMatchObject({ step: 'answered', results: [{ ref: 'R-1', channel: 'webhook', by: 'Noemi Haskel', state: 'waiting', joints: [{ words: '0.38' }, { words: '0.44' }] }] });
    expect(road.screen.holds.map((h) => h.code)).toContain('RESULT_TO_CHECK');
    const [mine] = (await (await server.as('Tobin Arkwell')).read<{ rows: { number: string; state: string }[] }>('/api/reader/packages')).rows;
    expect(mine).toMatchObject({ number, state: 'read' });
  });

  it('amends under its own number; the earlier one does not come back by being sent again', async () => {
    await computer.send(message(reading(0.83)));
    const late = (await computer.send(message(reading(0.38)))).body as DeliveryAnswer;
    expect(late.readings[0]).toMatchObject({ outcome: 'alreadyThere', words: expect.stringContaining('a later one under the same number has taken its place') });
    await computer.send(message(reading(0.38, { number: 'R-1b' })));
    await road.look('vet');
    expect(road.screen.holds.map((h) => h.code)).toContain('RESULTS_DISAGREE');
    expect(road.study().results.map((r) => r.state)).toEqual(['superseded', 'waiting', 'waiting']);
  });
});

describe('the key of a centre', () => {
  it('is shown once, and its secret is in no other answer', async () => {
    const answers = [await scheme.get('/api/results-in?as=lead'), await (await road.as('manager')).get('/api/results-in'), await (await road.as('manager')).get('/api/practice')];
    for (const { text } of answers) expect(text).not.toContain(computer.made.secret);
    expect(Buffer.from(computer.made.secret, 'base64url')).toHaveLength(32);
  });

  it('is followed by another while both are valid; there is no third, and the old one is ended', async () => {
    const next = new CentreComputer(server, await scheme.send<KeyMade>('/api/results-in/keys?as=lead', { centre: server.scheme.centres.sluiceGreen.id }));
    for (const one of [other, next]) expect((await one.send(message(reading(0.38)))).status).toBe(422);
    const third = await scheme.post('/api/results-in/keys?as=lead', { centre: server.scheme.centres.sluiceGreen.id });
    expect([third.status, third.body]).toEqual([409, expect.objectContaining({ message: expect.stringContaining('End the older one') })]);
    const { keys } = await scheme.send<ResultsInScreen>(`/api/results-in/keys/${other.made.key}/end?as=lead`);
    expect(keys!.rows.find((k) => k.id === other.made.key)).toMatchObject({ endedAt: expect.stringMatching(/Z$/), lastUsedAt: expect.stringMatching(/Z$/) });
    expect((await other.send(message(reading(0.38)))).status).toBe(401);
    expect((await next.send(message(reading(0.38)))).status).toBe(422);
  });

  it('is made by nobody at a centre or a desk, nor by a manager for a centre that others registered', async () => {
    const centre = server.scheme.centres.threnfold.id;
    for (const name of ['Noemi Haskel', road.name('desk')]) expect((await (await server.as(name)).post('/api/results-in/keys', { centre })).status).toBe(403);
    expect((await (await road.as('manager')).post('/api/results-in/keys', { centre })).body).toMatchObject({ code: 'BAD_INPUT' });
    expect((await (await road.as('manager')).post(`/api/results-in/keys/${computer.made.key}/end`)).status).toBe(404);
    expect((await (await road.as('desk')).post('/api/results-in/keys?as=lead', { centre })).status).toBe(403);
  });
});

describe('an order whose centre answers by itself', () => {
  it('ends in a letter, and nobody has typed a number', async () => {
    const on = await sent('Alder');
    const parcel = await packageOf(on, 'hipLaxity');
    const { readings: [first] } = JSON.parse(example('message.json', { 'P-1A2B3C4D': parcel }, on.today)) as { readings: object[] };
    expect((await computer.send(message(first!))).status).toBe(200);
    await on.look('vet');
    await accept(on, on.study().id);
    await on.act('vet', 'releaseLetter', on.study().id, {});
    const { text } = await readPdf((await server.mail.wait(on.email, /a letter/)).attachments[0]!.content);
    for (const said of ['0.38', '0.44', 'Noemi Haskel']) expect(text).toContain(said);
  });
});
