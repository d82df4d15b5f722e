import { randomUUID } from 'node:crypto';
import type { Choosing, ChoosingSet } from '#libs/contracts/choosing';
import type { Round, SchemeTimes } from '#libs/contracts/readers';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { signIn, type Visitor } from './access-support/visitor.js';

let open: OpenApi;
let lead: Visitor;
let scheme: string;
const frozen: Record<string, string> = {};

beforeAll(async () => {
  open = await openApi(['Heron', 'Nettle']);
  lead = await signIn(open.url, 'oda@basin.example');
  scheme = (await open.owner.query<{ id: string }>('SELECT id FROM scheme')).rows[0]!.id;
  // Invented indices, 200 dogs evenly from .26 to .65: mean .455; standard deviation of 1 to n evenly: √((n² − 1)/12) steps, here n = 40 values of 5 dogs.
  const even = Object.fromEntries(Array.from({ length: 40 }, (_, i) => [26 + i, 5]));
  await freeze('enough', 'hipLaxity@1+2', 200, even);
  await freeze('few', 'hipLaxity@1+2', 12, { 40: 12 });
  await freeze('alike', 'hipLaxity@1+2', 50, { 40: 50 });
  await freeze('graded', 'hipExtended@1:2022', 50, { 1: 50 });
  await freeze('tiny', 'hipLaxity@1+2', 4, { 40: 4 });
}, 120_000);
afterAll(() => open.close());

async function freeze(breed: string, pool: string, n: number, values: Record<string, number>): Promise<void> {
  const counts = { dog: values, left: values, right: values };
  const { rows } = await open.owner.query<{ id: string }>(
    `INSERT INTO reference_set (freeze_id, scheme_id, protocol, pool, breed, age_band, frozen_on, n, counts, parts, unsent, from_year, to_year)
     VALUES ($1, $2, $3, $4, $5, 'months12to23', '2026-11-01', $6, $7, $8, 11, 2022, 2026) RETURNING id`,
    [randomUUID(), scheme, pool.split('@')[0], pool, breed, n, counts, { senders: null, years: [], trend: null }]);
  frozen[breed] = rows[0]!.id;
}

const choose = async (breed: string, more: object = {}) => {
  const { status, body } = await lead.post('/api/scheme/choosing', { set: frozen[breed], dogs: 80, dogsOf100: 40, bitches: 120, bitchesOf100: 50, ...more });
  return { status, body: body as Choosing & { code?: string; message?: string; fields?: { path: string; message: string }[] } };
};

describe('choosing a share', () => {
  it('lists the sets in force, and says of those that cannot be reckoned with why', async () => {
    const sets = (await lead.get('/api/scheme/choosing')).body as ChoosingSet[];
    const of = (breed: string) => sets.find((s) => s.breed === breed);
    expect(of('Enough')).toMatchObject({ study: 'Hip laxity by stress radiography', age: 'at 12 to 23 months', n: 200, refused: null });
    expect(of('Few')!.refused).toContain('Only 12 dogs');
    expect(of('Graded')!.refused).toContain('Grades are steps');
    expect(of('Tiny')).toBeUndefined();
  });

  it('tells what is left, and what it would do for every published heritability', async () => {
    const { status, body } = await choose('enough');
    expect(status).toBe(200);
    expect(body.left).toEqual({ dogs: 32, bitches: 60, effective: (4 * 32 * 60) / 92, inbreeding: expect.closeTo(92 / (8 * 32 * 60), 12) });
    expect(body.mean).toBeCloseTo(0.455, 10);
    expect(body.sd).toBeCloseTo(Math.sqrt((((40 ** 2 - 1) / 12) * 200) / 199) / 100, 10);
    const heritabilities = body.rows.map((r) => r.heritability);
    expect(heritabilities).toEqual([...heritabilities].sort((a, b) => a - b));
    expect([heritabilities[0], heritabilities.at(-1)]).toEqual([0.15, 0.83]); // Tikekar et al. 2018; Ginja et al. 2008
    for (const { means, source } of body.rows) {
      expect(source).toMatch(/\d{4}/);
      expect(means.every((mean, i) => mean < (i === 0 ? body.mean : means[i - 1]!))).toBe(true);
    }
    // Falconer & Mackay, Appendix Table A: intensities .966 and .798; few animals give a little less.
    const first = body.rows.find((r) => r.heritability === 0.6)!.means[0]!;
    expect(body.mean - first).toBeLessThan((0.6 * body.sd * (0.965856 + 0.797885)) / 2);
    expect(body.mean - first).toBeCloseTo((0.6 * body.sd * (0.965856 + 0.797885)) / 2, 2);
    expect(body.unsent).toBe(11);
    expect(body.warning).toBe(false);
  });

  it.each([['few', 'Only 12 dogs'], ['graded', 'Grades are steps'], ['alike', 'All dogs of this set have one value']])('is refused for the set “%s”, with the reason beside the field', async (breed, why) => {
    const { status, body } = await choose(breed);
    expect([status, body.code, body.fields?.[0]?.path]).toEqual([400, 'BAD_INPUT', 'set']);
    expect(body.message).toContain(why);
  });

  it('a set below five dogs is not there, nor one of nobody', async () => {
    expect((await choose('tiny')).status).toBe(404);
    expect((await choose('enough', { set: randomUUID() })).status).toBe(404);
  });

  it('a share that leaves no animal is refused in words', async () => {
    const { status, body } = await choose('enough', { dogs: 10, dogsOf100: 1 });
    expect([status, body.code]).toEqual([400, 'BAD_INPUT']);
    expect(body.message).toContain('nothing can be bred');
  });

  it('is the lead’s alone', async () => {
    const desk = await signIn(open.url, 'marit@weirside.example');
    for (const answer of [await desk.get('/api/scheme/choosing'), await desk.get('/api/scheme/times'), await desk.post('/api/scheme/choosing', { set: frozen.enough, dogs: 80, dogsOf100: 40, bitches: 120, bitchesOf100: 50 })]) expect(answer.status).toBe(403);
  });
});

describe('a reading round', () => {
  const ask = async (protocol: string, table: string) => {
    const { status, body } = await lead.post('/api/scheme/reading-round', { protocol, table });
    return { status, body: body as Round & { message?: string } };
  };

  it('of two readers who measure: correlations, limits of agreement, smallest real change', async () => {
    const { body } = await ask('hipLaxity', '0.40\t0.42\n0,55\t0,52\n\n0.31\t0.30\n0.62\t0.66\n');
    expect(body).toMatchObject({ kind: 'measured', films: 4, readers: 2 });
    // Differences −.02, .03, .01, −.04: √(Σd²/2n) = √(.003/8), by hand.
    expect(body.kind === 'measured' && body.within.sd).toBeCloseTo(Math.sqrt(0.003 / 8), 10);
    expect(body.kind === 'measured' && body.pair!.difference.value).toBeCloseTo(-0.005, 10);
  });

  it('of two readers who grade: kappa in three ways; of three: Fleiss', async () => {
    const two = (await ask('hipExtended', 'A1 A1\nB1 B2\nC1 C1\nD1 C2')).body;
    expect(two).toMatchObject({ kind: 'graded', films: 4, observed: 0.5 });
    expect(two.kind === 'graded' && two.kappas).toHaveLength(3);
    const three = (await ask('elbow', '0;0;1\n1;1;1\n2;3;2')).body;
    // Pairs alike: 1 of 3, 3 of 3, 1 of 3.
    expect(three.kind === 'graded' && three.observed).toBeCloseTo(5 / 9, 10);
  });

  it('in which every film has one grade says that it cannot be said', async () => {
    expect((await ask('elbow', '0 0\n0 0\n0 0')).body).toMatchObject({ kappas: [{ value: null }] });
    expect((await ask('hipLaxity', '0.4 0.4\n0.4 0.4\n0.4 0.4')).body).toMatchObject({ agreement: null, within: { sd: 0 } });
  });

  it.each([
    ['hipLaxity', '0.4 0.5\n0.4 x\n0.4 0.4', 'Line 2, column 2: “x” is no number'],
    ['hipLaxity', '0.4 0.5\n0.4 -0.1\n0.4 0.4', 'Line 2, column 2: -0.1 is no distraction index'],
    ['hipLaxity', '0.4 0.5\n0.4\n0.4 0.4', 'Line 2 has 1 cells and the first has 2'],
    ['hipLaxity', '0.4\n0.5\n0.6', 'The first line has one cell'],
    ['hipLaxity', '0.4 0.5\n0.4 0.4', 'Only 2 films'],
    ['elbow', '0 0\n4 0\n0 0', 'Line 2, column 1: “4” is no grade of this study'],
    ['nothing', '0 0\n0 0\n0 0', 'Please choose a study'],
  ])('%s %j is refused: %s', async (protocol, table, why) => {
    const { status, body } = await ask(protocol, table);
    expect(status).toBe(400);
    expect(body.message).toContain(why);
  });
});

describe('times', () => {
  it('says nothing of a study with fewer than five sent', async () => {
    const times = (await lead.get('/api/scheme/times')).body as SchemeTimes;
    expect(times.studies.every(({ curve }) => curve === null)).toBe(true);
    expect(times.returned).toBeNull();
  });

  it('keeps open studies in, and counts from the first sending', async () => {
    const one = async <T>(sql: string, values: unknown[] = []) => (await open.owner.query(sql, values)).rows as T[];
    const [study] = await one<{ id: string; order_id: string; practice_id: string; centre_id: string }>("SELECT id, order_id, practice_id, centre_id FROM study WHERE protocol = 'hipLoaded' OR protocol = 'hipLaxity' LIMIT 1");
    // Six invented studies of the invented protocol: sent ten days ago; four answered after 2, 2, 4 and 6 days, two still open.
    const day = (ago: number) => new Date(Date.now() - ago * 86_400_000);
    for (const [i, answeredAfter] of [2, 2, 4, 6, null, null].entries()) {
      const id = randomUUID();
      await one('INSERT INTO study (id, order_id, practice_id, protocol, version, centre_id, step, imaged_not_sent, open) VALUES ($1, $2, $3, $4, $5, $6, $7, false, $8)', [id, study!.order_id, study!.practice_id, 'hipLoaded', '1', study!.centre_id, 'sent', answeredAfter === null]);
      const fact = (type: string, at: Date, body: object) => one('INSERT INTO fact (order_id, id, type, at, rec, by, by_name, role, practice, body) VALUES ($1, $2, $3, $4, $4, $5, $6, $7, $8, $9)', [study!.order_id, randomUUID(), type, at, 'x', 'x', 'desk', study!.practice_id, { study: id, ...body }]);
      await fact('packageSent', day(10), { package: randomUUID(), send: `first ${i}`, centre: study!.centre_id, channel: 'portal' });
      if (i === 0) {
        await fact('filmsRejected', day(9), { send: 'first 0', views: [], reasons: [] });
        await fact('packageSent', day(9), { package: randomUUID(), send: 'again', centre: study!.centre_id, channel: 'portal' });
      }
      if (answeredAfter !== null) await fact('resultArrived', day(10 - answeredAfter), { result: randomUUID() });
    }
    const times = (await lead.get('/api/scheme/times')).body as SchemeTimes;
    const { curve } = times.studies.find((s) => s.study === 'Hips, loaded')!;
    // Kaplan and Meier by hand: 6 at risk, 2 closed: 4/6; 4 at risk, 1: 3/4 of it; 3 at risk, 1: 2/3 of it.
    expect(curve).toMatchObject({ n: 6, stillOpen: 2, half: { time: 4 } });
    expect(curve!.steps.map((s) => [s.day, s.open])).toEqual([[2, expect.closeTo(4 / 6, 10)], [4, expect.closeTo(1 / 2, 10)], [6, expect.closeTo(1 / 3, 10)]]);
    const { quarters, practices } = times.returned!;
    expect(quarters.reduce((sum, m) => sum + m.cases, 0)).toBe(1);
    expect(practices).toEqual([]);
    expect(JSON.stringify(times)).not.toContain('Weirside');
  });
});
