import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { admit, ownerSigns, putToSleep } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
/** Invented, so that no number here can be taken for a dose. */
const drugs = [{ drug: 'Example sedative (invented)', route: 'as the vet decides', dose: 1, doseUnit: 'mg/kg' as const, concentration: 100, concentrationUnit: 'mg/mL' as const, resolutionMl: 0.01 as const }];
const plan = (weightKg: number, kind: 'first' | 'topUp' = 'first') => ({ kind, vetPresent: true, weightKg, drugs });
const codes = () => road.screen.holds.filter((h) => h.on.id === road.visit.id).map((h) => h.code);
const refusedFor = (body: unknown) => (body as { because: { code: string }[] }).because.map((b) => b.code);

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Bracken', studies: [['elbow', 'threnfold']], inDays: 1 });
  await ownerSigns(road);
  await road.untilVisit();
  await admit(road);
}, 60_000);
afterAll(async () => { await server.close(); });

describe('a weight that jumped', () => {
  it('is asked about in the plan, and nothing is signed', async () => {
    const answer = await road.attempt('vet', 'signPlan', road.visit.id, plan(34));
    expect(answer.status).toBe(400);
    expect(JSON.stringify(answer.body)).toContain('The dog weighs 24 kg today, and the plan says 34 kg. Weigh again or correct the plan.');
    expect((await road.look()).visits[0]!.plans).toEqual([]);
  });
});

describe('two transponders, or none that can be read', () => {
  it('passes and readers are logged, and the dog is not put to sleep', async () => {
    await road.act('nurse', 'scanDog', road.visit.id, { place: 'admission', numbers: [], passes: 3, readers: 2 });
    expect(codes()).toContain('IDENTITY_NOT_MATCHED');
    const scan = await server.look((tx) => tx.fact.findFirstOrThrow({ where: { orderId: road.id, type: 'identityScanned' }, orderBy: { rec: 'desc' } }));
    expect(scan.body).toMatchObject({ numbers: [], passes: 3, readers: 2 });
    await road.act('nurse', 'scanDog', road.visit.id, { place: 'admission', numbers: [road.dog.transponder, '999000000000077'], passes: 3, readers: 2 });
    expect(codes()).toContain('IDENTITY_NOT_MATCHED');
    expect(road.visit.scans.at(-1)).toMatchObject({ matches: false });
  });

  it('are settled by a vet, with the reason, and by nobody else', async () => {
    expect((await road.attempt('nurse', 'settleIdentity', road.visit.id, { why: 'A second one was implanted.' })).body).toMatchObject({ code: 'NOT_YOUR_ROLE' });
    await road.act('vet', 'settleIdentity', road.visit.id, { why: 'A second one was implanted abroad; the passport names both.' });
    expect(codes()).not.toContain('IDENTITY_NOT_MATCHED');
    expect(road.screen.happened.map((h) => h.what).join(' ')).toContain('the passport names both');
  });
});

describe('the plan', () => {
  it('of a vet who is not here is signed again by the one who is', async () => {
    await road.act('vet', 'examine', road.visit.id, { statusClass: 1, findings: 'Heart and lungs without findings.' });
    await road.act('vet', 'signPlan', road.visit.id, { ...plan(24), vetPresent: false });
    expect(codes()).toContain('PLAN_NOT_SIGNED_BY_ATTENDING');
    const refused = await road.attempt('vet', 'startSedation', road.visit.id, { plan: road.visit.plans.at(-1)!.id });
    expect(refusedFor(refused.body)).toContain('PLAN_NOT_SIGNED_BY_ATTENDING');
    await road.act('vet', 'signPlan', road.visit.id, plan(24));
    expect(codes()).not.toContain('PLAN_NOT_SIGNED_BY_ATTENDING');
    expect(road.visit.plans).toHaveLength(2);
  });

  it('for more is a new one, signed anew, and is used once', async () => {
    await putToSleep(road);
    const refused = await road.attempt('vet', 'topUp', road.visit.id, { plan: road.visit.plans.at(-1)!.id });
    expect(refusedFor(refused.body)).toEqual(['TOP_UP_NOT_SIGNED']);
    await road.act('vet', 'signPlan', road.visit.id, plan(24, 'topUp'));
    await road.act('vet', 'topUp', road.visit.id, { plan: road.visit.plans.at(-1)!.id });
    expect(road.visit.plans.at(-1)).toMatchObject({ kind: 'topUp', used: true });
    expect((await road.attempt('vet', 'topUp', road.visit.id, { plan: road.visit.plans.at(-1)!.id })).status).toBe(422);
  });
});

describe('another day', () => {
  it('asks about a weight that jumped since the last one, until somebody has weighed again', async () => {
    const later = await Road.book(server, { dog: 'Bracken', studies: [['hipExtended', 'threnfold']], inDays: 14 });
    await ownerSigns(later, 2);
    await later.untilVisit();
    const weight = { weightKg: 31, bodyCondition: 5, fastedHours: 10 };
    const asked = await later.attempt('nurse', 'admit', later.visit.id, weight);
    expect(asked.status).toBe(400);
    expect(JSON.stringify(asked.body)).toContain('The dog weighed 24 kg on ');
    expect((await later.look()).visits[0]!.admitted).toBeNull();
    await later.act('nurse', 'admit', later.visit.id, { ...weight, weighedAgain: true });
    expect(later.visit.admitted!.weightKg).toBe(31);
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
