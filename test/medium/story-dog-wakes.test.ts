import { randomUUID } from 'node:crypto';
import { withAKill } from '#test/support/after-a-kill';
import { readPdf } from '#test/support/read-pdf';
import { bookAgain } from '#test/support/read-again';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { admit, judge, ownerSigns, sedate, takeView } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
let stopped: Date;
const ALL_SIGNS = ['awake', 'stands', 'swallows', 'warm', 'gums', 'breathing', 'comfortable'] as const;
const NOT_TAKEN = 'missing: ';
const factsOf = (type: string) => server.look((tx) => tx.fact.findMany({ where: { orderId: road.id, type }, orderBy: { at: 'asc' } }));
const GOES_HOME = /goes home: please read$/;

/** Two of three views accepted: both elbows, and not the hips. */
beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold'], ['hipExtended', 'threnfold']], inDays: 1 });
  await ownerSigns(road);
  await road.untilVisit();
  await admit(road);
  await sedate(road);
  for (const view of ['mlFlexedLeft', 'mlFlexedRight']) await judge(road, await takeView(road, view), 'accept');
}, 60_000);
afterAll(async () => { await server.close(); });

describe('the tablet without a network', () => {
  it('sends later, each once and with its own time, that imaging was stopped, what was seen since, and the recovery', async () => {
    const from = server.clock.now().getTime();
    const minute = (n: number) => new Date(from + n * 60_000).toISOString();
    stopped = new Date(minute(1));
    const kept = [
      { action: 'stopImaging', at: minute(1), input: { woke: true } },
      { action: 'recordReading', at: minute(4), input: { device: 'tablet', heartRate: 80, breaths: 18 } },
      { action: 'recordReading', at: minute(8), input: { device: 'tablet', heartRate: 84, breaths: 20 } },
      { action: 'signRecovery', at: minute(12), input: { signs: [...ALL_SIGNS] } },
    ] as const;
    server.clock.advance({ minutes: 30 });
    for (const { action, at, input } of kept) {
      const key = randomUUID();
      // The first answer got lost on the way: the tablet asks again.
      for (let tries = 0; tries < 2; tries++) expect((await road.attempt('nurse', action, road.visit.id, input as never, { key, at })).status).toBe(200);
    }
    await road.look('nurse');
    expect(road.visit).toMatchObject({ step: 'recovered', recovery: { at: minute(12) } });
    expect((await factsOf('imagingEnded')).map((f) => [f.at, (f.body as { how: string }).how])).toEqual([[stopped, 'woke']]);
    expect(road.visit.readings.slice(-2).map((r) => r.at)).toEqual([minute(4), minute(8)]);
    expect(await factsOf('recoverySigned')).toHaveLength(1);
  });

  it('takes no further picture', async () => {
    const study = road.study('hipExtended').id;
    const refused = await road.attempt('operator', 'takeView', study, { view: 'vdExtended', serves: [study], image: await road.upload(), marker: 'L', people: [road.slot.operator.id], technique: { kv: 66, mas: 12, distanceCm: 110 } });
    expect(refused.status).toBe(422);
  });
});

describe('going home', () => {
  it('the sheet is printed and mailed, also when the worker dies on the way', async () => {
    await withAKill(road, () => road.act('nurse', 'giveSheet', road.visit.id, { to: road.dog.person.name }));
    expect(server.mail.to(road.email).filter((m) => GOES_HOME.test(m.subject))).toHaveLength(1);
    const paper = await (await road.as('nurse')).bytes(`/api/orders/${road.id}/documents/${road.visit.sheet!.document}`);
    expect((await readPdf(paper)).text.replace(/\s+/g, ' ')).toContain('Not all pictures were taken.');
  }, 60_000);

  it('the mail says which picture is missing, why, and what another day would ask for', () => {
    const { text } = server.mail.to(road.email).find((m) => GOES_HOME.test(m.subject))!;
    const missing = road.study('hipExtended').views.find((v) => v.required)!;
    expect(text).toContain('woke, and we stopped');
    expect(text.toLowerCase()).toContain(`${NOT_TAKEN}${missing.name.toLowerCase()}.`);
    expect(text).toContain('we ask for your consent again and weigh and examine the dog again');
    for (const taken of road.study('elbow').views.filter((v) => v.accepted)) expect(text.toLowerCase()).not.toContain(taken.name.toLowerCase());
  });

  it('the dog leaves', async () => {
    await road.act('nurse', 'sendHome', road.visit.id, { with: road.dog.person.name });
    expect(road.visit.step).toBe('home');
  });
});

describe('another day for the missing view', () => {
  it('is booked for that study alone, and asks for consent, answers and estimate anew', async () => {
    await road.act('desk', 'openVisit', road.id, { studies: [road.study('hipExtended').id], reason: 'missingViews' });
    await bookAgain(road, 14);
    expect(road.visit).toMatchObject({ studies: [road.study('hipExtended').id], consent: null, admitted: null, examined: null, plans: [] });
    expect(road.screen.holds.filter((h) => h.on.id === road.visit.id).map((h) => h.code)).toEqual(expect.arrayContaining(['CONSENT_SEDATION_MISSING', 'ESTIMATE_NOT_ACCEPTED', 'ANSWERS_MISSING']));
  });

  it('puts no dog to sleep before it was weighed and examined that day', async () => {
    await ownerSigns(road, 2);
    await road.untilVisit();
    await admit(road);
    const held = road.screen.next.find((n) => n.action === 'startSedation' && n.on.id === road.visit.id)!;
    expect(held).toMatchObject({ allowed: false, because: expect.arrayContaining(['NOT_EXAMINED', 'PLAN_NOT_SIGNED']) as string[] });
    expect((await road.attempt('vet', 'startSedation', road.visit.id, { plan: road.screen.visits[0]!.plans[0]!.id })).status).toBe(422);
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
