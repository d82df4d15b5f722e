import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { holdWords } from '#libs/pathway/words';
import { studySteps, visitSteps } from '#libs/pathway/steps';
import { fhirTypes } from '#libs/fhir/resources';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { askedOf } from '#libs/steps/fhir/asked';
import { search } from '#libs/steps/fhir/search';
import { fillDemo } from '#seed/fill-demo';
import { today } from '#seed/scenario/today';
import type { Plan } from '#seed/scenario/plan';
import type { Road } from '#seed/roads/road';
import { cloneDatabase, type TestDatabase } from '#test/support/database';
import { faultsOf } from '#test/support/fhir-definitions';

let database: TestDatabase;
let db: Db;
let folder: string;

const NOW = '2026-11-25T09:27:00Z';
const fill = (now: string, chosen?: Plan[]) => fillDemo({ db, files: new DiskFileStore(folder), publicUrl: 'http://127.0.0.1:4180', now: new Date(now), ...(chosen ? { chosen } : {}) });

async function open(): Promise<void> {
  database = await cloneDatabase();
  folder = await mkdtemp(path.join(tmpdir(), 'demo-'));
  db = new Db(database.workerUrl);
}

async function close(): Promise<void> {
  await db.close();
  await database.drop();
  await rm(folder, { recursive: true });
}

const all = (roads: Road[]) => roads.flatMap(({ evaluation: e }) => [e.order, ...Object.values(e.visits), ...Object.values(e.studies)]);
const stepsOf = (roads: Road[], what: 'visits' | 'studies') => new Set(roads.flatMap(({ evaluation }) => Object.values(evaluation[what]).map((x) => x.step as string)));
const holdsOf = (roads: Road[]) => new Set(all(roads).flatMap((standing) => standing.holds.map((hold) => hold.code as string)));

describe('the demo', () => {
  let roads: Road[];
  beforeAll(async () => {
    await open();
    roads = (await fill(NOW))!;
  }, 300_000);
  afterAll(close);

  it('shows dogs at every step, with what is missing in words, and every fact counts', async () => {
    expect([...stepsOf(roads, 'visits')]).toEqual(expect.arrayContaining([...visitSteps.filter((s) => s !== 'wanted'), 'home', 'cancelled', 'missed', 'turnedAway']));
    expect([...stepsOf(roads, 'studies')]).toEqual(expect.arrayContaining([...studySteps.filter((s) => s !== 'appealed'), 'reported', 'ended']));
    expect([...holdsOf(roads)]).toEqual(
      expect.arrayContaining(['RESULT_OVERDUE', 'NOT_ACKNOWLEDGED', 'VIEWS_MISSING', 'ANSWER_UNKNOWN', 'CONSENT_SEDATION_MISSING', 'ESTIMATE_NOT_ACCEPTED', 'PLAN_NOT_SIGNED', 'GOING_HOME_SHEET_MISSING', 'REFERRAL_OPEN', 'CENTRE_CLOSED', 'PHONE_FIRST', 'RESULT_TO_EXPLAIN', 'CENTRE_TO_TELL']),
    );
    for (const standing of all(roads)) for (const hold of standing.holds) expect(holdWords(hold).title).toBeTruthy();
    expect(roads.flatMap((road) => road.evaluation.order.ignored)).toEqual([]);

    const counts = await db.system('looking', async (tx) => ({
      rejected: await tx.fact.count({ where: { type: 'filmsRejected' } }),
      amended: await tx.document.count({ where: { kind: 'certificate', state: 'amended', replacedBy: { not: null } } }),
      protocols: (await tx.study.findMany({ distinct: ['protocol'], select: { protocol: true } })).map((s) => s.protocol).sort(),
      early: await tx.fact.count({ where: { at: { gt: new Date(NOW) } } }),
      withoutFilm: await tx.image.count({ where: { previewSha: null } }),
    }));
    expect(counts).toMatchObject({ amended: 1, early: 0, withoutFilm: 0, protocols: ['elbow', 'hipExtended', 'hipLaxity', 'hipLoaded'] });
    expect(counts.rejected).toBeGreaterThan(0);
  });

  it('sets dogs beside their breed: with a full picture, with a warning, and with the reason why not', async () => {
    const standingOf = (dog: string) => roads.find((road) => road.dog.call === dog)!.facts.flatMap((f) => (f.type === 'letterReleased' ? [f.detail?.standing] : []));
    expect(standingOf('Brannoch')).toEqual([expect.objectContaining({ kind: 'place', n: 186, warning: false, senders: { litter: 36, chosen: 150 }, unsent: 19 })]);
    expect(standingOf('Cinder')).toEqual([expect.objectContaining({ kind: 'place', n: 64, warning: true })]);
    expect(standingOf('Kestrel')).toEqual([{ kind: 'none', why: 'tooFew', region: 'hip', n: 13 }]);
    expect(standingOf('Cobble')).toEqual([{ kind: 'none', why: 'noValue', region: 'hip', n: null }]);
  });

  it('leaves the worker a handful of mails, each with its job, and none of long ago', async () => {
    const { mails, jobs } = await db.system('looking', async (tx) => ({
      mails: await tx.message.findMany({ where: { state: 'waiting', notBefore: null } }),
      jobs: await tx.outbox.findMany({ where: { job: 'send-message', relayedAt: null } }),
    }));
    expect(new Set(mails.map((m) => m.kind))).toEqual(new Set(['confirmation', 'goingHome', 'missed', 'package', 'referral', 'result']));
    expect(mails.length).toBeLessThan(15);
    expect(mails.every((m) => m.createdAt > new Date('2026-11-25T07:00:00Z'))).toBe(true);
    const waiting = new Set(jobs.map((job) => (job.payload as { message: string }).message));
    expect(mails.every((m) => waiting.has(m.id))).toBe(true);
  });

  it('reads as FHIR in which the published definitions find no fault, in each practice', async () => {
    const homes = await db.system('looking', (tx) => tx.practice.findMany({ select: { id: true } }));
    const deps = { db, clock: new TestClock(new Date(NOW)), publicUrl: 'https://cotyla.example' };
    for (const { id: practice } of homes) {
      for (const type of fhirTypes.filter((t) => t !== 'RelatedPerson')) {
        const asked = askedOf(type, { _count: '200' });
        const bundle = await search(deps, { id: randomUUID(), name: 'a test', practice, scopes: ['orders', 'results', 'owners'] }, asked);
        for (const { resource } of bundle.entry ?? []) expect({ id: `${type}/${resource!.id}`, faults: faultsOf(resource!) }).toEqual({ id: `${type}/${resource!.id}`, faults: [] });
      }
    }
  }, 120_000);

  it('is filled in once', async () => {
    expect(await fill(NOW)).toBeUndefined();
  });
});

describe('the demo of a Sunday, two minutes after midnight', () => {
  beforeAll(open);
  afterAll(close);

  it('is as lively', async () => {
    const roads = (await fill('2026-11-21T23:02:00Z', today))!;
    const visits = roads.flatMap(({ evaluation }) => Object.values(evaluation.visits)).filter((visit) => visit.day === '2026-11-22');
    expect(new Set(visits.map((visit) => visit.step))).toEqual(new Set(['booked', 'admitted', 'sedated', 'imaged', 'recovered', 'home', 'turnedAway', 'cancelled']));
  });
});
