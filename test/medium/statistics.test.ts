import { randomUUID } from 'node:crypto';
import fc from 'fast-check';
import pg from 'pg';
import type { Joint } from '#libs/contracts/common';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db, type Tx } from '#libs/platform/database/db';
import { countingReading } from '#libs/science/protocols/counting-reading';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { queueActor } from '#libs/steps/record/actor';
import { append } from '#libs/steps/record/append';
import { lockOrder } from '#libs/steps/record/order-record';
import { workOn, type Stated } from '#libs/steps/record/work';
import { acceptedReadings } from '#libs/steps/result/accepted-readings';
import { freezeJob } from '#libs/steps/statistics/freeze-job';
import { freezeSets } from '#libs/steps/statistics/freeze-sets';
import { rebuildStatistics } from '#libs/steps/statistics/rebuild-statistics';
import { rebuiltWords } from '#libs/steps/statistics/rebuilt-words';
import { studyRows } from '#libs/steps/statistics/study-rows';
import type { DemoScheme } from '#seed/demo-scheme';
import { foundScheme } from '#seed/found-scheme';
import { cloneDatabase, type TestDatabase } from '#test/support/database';

/** Facts are appended as the steps append them, over the real database; values and dogs are invented. */
let database: TestDatabase;
let db: Db;
let scheme: DemoScheme;
const clock = new TestClock(new Date('2026-03-02T08:00:00Z'));
const deps = () => ({ db, clock, publicUrl: 'https://cotyla.example' });

beforeAll(async () => {
  database = await cloneDatabase();
  db = new Db(database.workerUrl);
  scheme = await foundScheme(db, clock.now());
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

const look = <T>(work: (tx: Tx) => Promise<T>) => db.system('a test looks', work);
const house = () => scheme.houses.weirside.id;

async function state(order: string, stated: Stated[]): Promise<void> {
  clock.advance({ minutes: 1 });
  await db.practice(house(), async (tx) => {
    const work = workOn(tx, clock.now(), queueActor(house()), (await lockOrder(tx, order))!, 'https://cotyla.example');
    await append(work, stated, { action: 'test', role: 'queue' });
  });
}

let accession = 0;
interface Opened { order: string; study: string; visit: string; dog: string }

async function dogOf(breed: string, born = '2024-06-01'): Promise<string> {
  return look(async (tx) => (await tx.dog.create({ data: { practiceId: house(), animalId: randomUUID(), callName: 'Somebody', breed, sex: 'male', neutered: false, bornEarliest: new Date(born), bornLatest: new Date(born), bornPrecision: 'day' }, select: { id: true } })).id);
}

async function open(dog: string, protocol = 'hipLaxity', version = '2'): Promise<Opened> {
  const [order, study, visit] = [randomUUID(), randomUUID(), randomUUID()];
  await db.practice(house(), (tx) => tx.order.create({ data: { id: order, practiceId: house(), accession: `T${++accession}`, dogId: dog } }).then(() => undefined));
  await state(order, [
    { type: 'orderOpened', order, dog, birth: { date: '2024-06-01', precision: 'day' }, numbers: [], addressees: [] },
    { type: 'studyAdded', study, protocol, version, centre: scheme.centres.threnfold.id },
    { type: 'visitOpened', visit, studies: [study], why: 'first' },
  ]);
  return { order, study, visit, dog };
}

const yes = (answer: 'yes' | 'no' = 'yes'): Stated => ({ type: 'consentGiven', purpose: 'statistics', textVersion: '1', answer, signer: 'owner', signerRole: 'owner' });
const hips = (left: number, right: number, findings?: Record<string, boolean>): Joint[] => [{ joint: 'left', value: left }, { joint: 'right', value: right, ...(findings ? { findings } : {}) }];
const VIEWS = ['vdExtended', 'vdCompression', 'vdDistraction'];
const filmed = ({ study, visit }: Opened): Stated[] => VIEWS.flatMap((view): Stated[] => {
  const exposure = randomUUID();
  return [{ type: 'exposureTaken', visit, exposure, view, serves: [study], image: exposure, imageDay: '2025-09-01', people: ['x'] }, { type: 'verdictGiven', exposure, study, verdict: 'accept', reasons: [] }];
});
const sent = ({ study }: Opened): Stated[] => {
  const sealed = randomUUID();
  return [{ type: 'packageSealed', study, package: sealed, exposures: [], manifest: 'm' }, { type: 'packageSent', study, package: sealed, send: randomUUID(), centre: scheme.centres.threnfold.id, channel: 'page' }];
};
const arrived = ({ study }: Opened, result: string, joints: Joint[], reading: 'first' | 'second' = 'first'): Stated => ({ type: 'resultArrived', study, result, ref: result, channel: 'page', reading, valuesHash: result, joints });
const accepted = ({ study }: Opened, result: string): Stated => ({ type: 'resultAccepted', study, result });

/** A dog with one accepted reading and the yes of its owner. */
async function readDog(breed: string, value: number, born?: string): Promise<Opened & { result: string }> {
  const opened = await open(await dogOf(breed, born));
  const result = randomUUID();
  await state(opened.order, [yes(), ...filmed(opened), ...sent(opened), arrived(opened, result, hips(value - 0.05, value)), accepted(opened, result)]);
  return { ...opened, result };
}

const rowsOf = (dog: string) => look((tx) => tx.countingRow.findMany({ where: { dogId: dog } }));
const counted = () => look(async (tx) => ({
  rows: await tx.countingRow.findMany({ orderBy: [{ dogId: 'asc' }, { protocol: 'asc' }] }),
  cells: await tx.countingCell.findMany({ orderBy: [{ pool: 'asc' }, { breed: 'asc' }, { ageBand: 'asc' }, { bornYear: 'asc' }, { sender: 'asc' }, { measure: 'asc' }, { value: 'asc' }] }),
}));
const inCells = async (breed: string, measure = 'dog') => look(async (tx) => (await tx.countingCell.findMany({ where: { breed, measure } })).flatMap((c) => Array<number>(c.n).fill(c.value)).sort((a, b) => a - b));

describe('a dog counts once', () => {
  it('from the moment on which its reading is accepted, with the looser hip', async () => {
    await readDog('Counted Hound', 0.44);
    expect(await inCells('counted hound')).toEqual([44]);
    expect(await inCells('counted hound', 'left')).toEqual([39]);
  });

  it('with the reading of its first examination, not with a better one later', async () => {
    const first = await readDog('Shopper', 0.62);
    const again = await open(first.dog);
    const result = randomUUID();
    await state(again.order, [yes(), ...filmed(again), ...sent(again), arrived(again, result, hips(0.2, 0.25)), accepted(again, result)]);
    expect(await inCells('shopper')).toEqual([62]);
  });

  it('not at all where the first examination may not be counted, whatever came later', async () => {
    const first = await readDog('Chooser', 0.62);
    const again = await open(first.dog);
    const result = randomUUID();
    await state(again.order, [yes(), ...filmed(again), ...sent(again), arrived(again, result, hips(0.2, 0.25)), accepted(again, result)]);
    await state(first.order, [{ type: 'consentWithdrawn', purpose: 'statistics' }]);
    expect(await inCells('chooser')).toEqual([]);
  });

  it('by the second reading after an appeal, and by the amended one, whichever way they went', async () => {
    const dog = await readDog('Amended', 0.44);
    const result = randomUUID();
    await state(dog.order, [arrived(dog, result, hips(0.5, 0.58)), accepted(dog, result)]);
    expect(await inCells('amended')).toEqual([58]);
  });

  it('no more when the reading was another dog’s, and again by the right one', async () => {
    const dog = await readDog('Exchanged', 0.44);
    await state(dog.order, [{ type: 'resultWithdrawn', study: dog.study, result: dog.result, why: 'otherDog' }]);
    expect(await inCells('exchanged')).toEqual([]);
    const right = randomUUID();
    await state(dog.order, [arrived(dog, right, hips(0.3, 0.31)), accepted(dog, right)]);
    expect(await inCells('exchanged')).toEqual([31]);
  });

  it('when it was entered twice and is merged: the examination that came first', async () => {
    const one = await readDog('Twin', 0.5);
    const two = await readDog('Twin', 0.3);
    expect(await inCells('twin')).toEqual([30, 50]);
    await db.practice(house(), (tx) => tx.$executeRaw`UPDATE orders SET dog_id = ${two.dog}::uuid WHERE id = ${one.order}::uuid`);
    expect(await inCells('twin')).toEqual([50]);
    expect(await rowsOf(one.dog)).toEqual([]);
  });
});

describe('a dog is not counted', () => {
  it.each([
    ['with signs of arthrosis', hips(0.4, 0.5, { arthrosis: true })],
    ['with an operated joint', hips(0.4, 0.5, { operated: true })],
    ['with one hip that could not be read', [{ joint: 'left', value: 0.4 }, { joint: 'right', reason: 'position' }] as Joint[]],
  ])('%s', async (_, joints) => {
    const opened = await open(await dogOf('Kept Out'));
    const result = randomUUID();
    await state(opened.order, [yes(), ...filmed(opened), ...sent(opened), arrived(opened, result, joints), accepted(opened, result)]);
    expect(await rowsOf(opened.dog)).toEqual([]);
  });

  it('without the owner’s yes, and is from the yes on', async () => {
    const opened = await open(await dogOf('Asked'));
    const result = randomUUID();
    await state(opened.order, [...filmed(opened), ...sent(opened), arrived(opened, result, hips(0.4, 0.41)), accepted(opened, result)]);
    expect(await inCells('asked')).toEqual([]);
    await state(opened.order, [yes()]);
    expect(await inCells('asked')).toEqual([41]);
    await state(opened.order, [yes('no')]);
    expect(await inCells('asked')).toEqual([]);
  });

  it('with a reading, but as one of those X-rayed and not sent, until its films go', async () => {
    const opened = await open(await dogOf('Kept Home'));
    await state(opened.order, filmed(opened));
    expect(await inCells('kept home', 'unsent')).toEqual([0]);
    await state(opened.order, sent(opened));
    expect(await inCells('kept home', 'unsent')).toEqual([]);
  });
});

it('after any history, rows and histograms are what a rebuild from the facts makes of them', async () => {
  type Step = { on: number; do: 'accept' | 'amend' | 'second' | 'withdraw' | 'yes' | 'no' | 'film' | 'send' | 'merge'; value: number; flag: boolean };
  const step: fc.Arbitrary<Step> = fc.record({ on: fc.nat(5), do: fc.constantFrom('accept', 'amend', 'second', 'withdraw', 'yes', 'yes', 'no', 'film', 'send', 'merge'), value: fc.integer({ min: 10, max: 90 }).map((n) => n / 100), flag: fc.boolean() });
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 5, maxLength: 20 }), async (history) => {
      const dogs = [await dogOf('Any One'), await dogOf('Any One'), await dogOf('any two ', '2025-05-01')];
      const orders: (Opened & { results: string[] })[] = [];
      for (let i = 0; i < 6; i++) orders.push({ ...(await open(dogs[i % 3]!, i === 4 ? 'hipLoaded' : 'hipLaxity', i === 3 || i === 4 ? '1' : '2')), results: [] });
      for (const { on, do: what, value, flag } of history) {
        const order = orders[on]!;
        const result = randomUUID();
        if (what === 'accept' || what === 'amend' || what === 'second') {
          order.results.push(result);
          await state(order.order, [arrived(order, result, flag ? [{ joint: 'left', value }, { joint: 'right', reason: 'position' }] : hips(value, value + 0.03), what === 'second' ? 'second' : 'first'), accepted(order, result)]);
        } else if (what === 'withdraw') {
          if (order.results.length > 0) await state(order.order, [{ type: 'resultWithdrawn', study: order.study, result: order.results.pop()!, why: 'otherDog' }]);
        } else if (what === 'film') await state(order.order, filmed(order));
        else if (what === 'send') await state(order.order, sent(order));
        else if (what === 'merge') {
          await db.practice(house(), (tx) => tx.$executeRaw`UPDATE orders SET dog_id = ${dogs[on % 3]!}::uuid WHERE id = ${orders[5 - on]!.order}::uuid`);
          await state(orders[5 - on]!.order, [{ type: 'dogRestated' }]); // as merging two entries does
        } else await state(order.order, [yes(what)]);
      }
      const kept = await counted();
      expect((await rebuildStatistics(deps())).differed).toEqual([]);
      expect(await counted()).toEqual(kept);
      for (const dog of dogs) expect((await rowsOf(dog)).find((r) => r.protocol === 'hipLaxity' && r.state === 'counted')?.reading ?? null).toBe(await chosenByRule(dog));
    }),
    { numRuns: 12 },
  );
}, 120_000);

it('a rebuild sets right what is not as the facts say, and tells it by breed', async () => {
  const [one, two] = [await readDog('Miscounted', 0.44), await readDog('Miscounted', 0.5)];
  const kept = await counted();
  const owner = new pg.Client(database.ownerUrl);
  await owner.connect();
  await owner.query("UPDATE statistics_study SET dog_value = 60 WHERE study_id = $1", [one.study]);
  await owner.query('DELETE FROM counting_row WHERE dog_id = $1', [two.dog]);
  await owner.query("UPDATE counting_cell SET n = 7 WHERE breed = 'miscounted' AND measure = 'left' AND value = 39");
  await owner.end();
  const rebuilt = await rebuildStatistics(deps());
  const group = { breed: 'miscounted', pool: 'hipLaxity@1+2', ageBand: 'months12to23' };
  expect(rebuilt.differed).toEqual([{ what: 'study', ...group, n: 1 }, { what: 'dog', ...group, n: 1 }, { what: 'cell', ...group, n: 1 }]);
  expect(rebuiltWords(rebuilt)[1]).toBe('miscounted, hipLaxity@1+2, at 12 to 23 months: 1 study was noted otherwise than its facts say.');
  expect(await counted()).toEqual(kept);
  expect(rebuiltWords(await rebuildStatistics(deps())).at(-1)).toBe('Nothing differed.');
});

/** By the rule of the protocol over all readings of the dog, as the science says it. */
async function chosenByRule(dog: string): Promise<string | null> {
  return look(async (tx) => {
    const orders = await tx.order.findMany({ where: { dogId: dog }, select: { id: true } });
    const works = [];
    for (const { id } of orders) works.push(workOn(tx, clock.now(), queueActor(house()), (await lockOrder(tx, id))!, ''));
    const readings = works.flatMap((w) => acceptedReadings({ order: w.order.id, accession: '', dog: '', studies: Object.values(w.evaluation.studies), facts: w.order.facts })).filter((r) => r.protocol.code === 'hipLaxity');
    const chosen = countingReading(findProtocol('hipLaxity', '2')!, readings);
    return works.flatMap(studyRows).find((row) => row.reading === chosen?.id && row.counts)?.reading ?? null;
  });
}

describe('a set that is frozen', () => {
  const BREED = 'frozen pointer';
  const sets = (breed = BREED) => look((tx) => tx.referenceSet.findMany({ where: { breed }, orderBy: { seq: 'asc' } }));
  const herd = async (n: number, breed = 'Frozen Pointer') => {
    const dogs = [];
    for (let i = 0; i < n; i++) dogs.push(await readDog(breed, 0.3 + (i % 40) / 100));
    return dogs;
  };

  it('holds the counts of its day and is not changed any more', async () => {
    await herd(21);
    await freezeSets(deps(), 'Oda Fering');
    expect(await sets()).toMatchObject([{ n: 21, pool: 'hipLaxity@1+2', ageBand: 'months12to23', fromYear: 2025, toYear: 2025 }]);
    await expect(look((tx) => tx.referenceSet.updateMany({ data: { n: 1 } }))).rejects.toThrow();
    await expect(look((tx) => tx.referenceSet.deleteMany({}))).rejects.toThrow();
  });

  it('is not followed by one that four newcomers could be read from, and is by one with five', async () => {
    await herd(4);
    await freezeSets(deps(), 'Oda Fering');
    expect(await sets()).toHaveLength(1);
    const [fifth] = await herd(1);
    await freezeSets(deps(), 'Oda Fering');
    expect((await sets()).map((s) => s.n)).toEqual([21, 26]);
    await state(fifth!.order, [{ type: 'consentWithdrawn', purpose: 'statistics' }]);
    await herd(6);
    await freezeSets(deps(), 'Oda Fering');
    // One has left: four others sit out, so that nobody can tell which value went.
    expect((await sets()).map((s) => s.n)).toEqual([21, 26, 27]);
    const [first, , last] = await sets();
    expect(await look((tx) => tx.referenceMember.count({ where: { setId: first!.id } }))).toBe(0);
    expect(await look((tx) => tx.referenceMember.count({ where: { setId: last!.id, dogId: fifth!.dog } }))).toBe(0);
  });

  it('tells the number alone below twenty, and nothing below five', async () => {
    const [dog] = await herd(7, 'Few');
    await herd(4, 'Fewer');
    await freezeSets(deps(), 'Oda Fering');
    const asked = (order: string) => db.practice(house(), (tx) => tx.$queryRaw<{ told: Record<string, unknown> | null }[]>`SELECT app.set_in_force(${order}::uuid, 'hipLaxity@1+2', 'months12to23') AS told`);
    expect((await asked(dog!.order))[0]!.told).toMatchObject({ n: 7, counts: null, parts: null });
    expect(await sets('fewer')).toEqual([]);
  });

  it('is frozen by the clock once in a calendar year', async () => {
    const runs = () => look((tx) => tx.referenceFreeze.count());
    const before = await runs();
    await freezeJob(deps(), {});
    expect(await runs()).toBe(before);
    clock.set('2027-01-01T03:00:00Z');
    await freezeJob(deps(), {});
    await freezeJob(deps(), {});
    expect(await runs()).toBe(before + 1);
  });
});

it('the api’s role reads and writes none of it but through the narrow functions', async () => {
  const api = new Db(database.apiUrl);
  try {
    for (const table of ['statistics_study', 'counting_row', 'counting_cell', 'reference_set', 'reference_member', 'reference_freeze', 'breed_births', 'app.counting_choice', 'app.counting_part', 'app.told_set']) {
      await expect(api.practice(house(), (tx) => tx.$queryRawUnsafe(`SELECT * FROM ${table}`))).rejects.toThrow(/permission denied/);
    }
    const { order } = await readDog('Foreign', 0.4);
    await expect(api.practice(scheme.houses.karsby.id, (tx) => tx.$executeRaw`SELECT app.note_studies(${order}::uuid, '[]'::jsonb)`)).rejects.toThrow(/only who sees an order/);
    for (const name of ['rebuild_counts', 'rebuild_cells']) await expect(api.practice(house(), (tx) => tx.$executeRawUnsafe(`SELECT app.${name}()`))).rejects.toThrow(/permission denied/);
  } finally {
    await api.close();
  }
});
