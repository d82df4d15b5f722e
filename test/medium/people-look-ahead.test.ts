import type { OrderScreen } from '#libs/contracts/screens/order';
import { addDays } from '#libs/pathway/days';
import { addToOutbox } from '#libs/platform/database/outbox';
import { findProtocol, installStudies } from '#libs/science/protocols/catalogue';
import { schedules } from '#apps/worker/schedules';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';

let server: RunningServer;
let road: Road;
/** Booked for a day that the look does not reach. */
let far: Road;

const night = async () => {
  await server.look((tx) => addToOutbox(tx, 'look-ahead', {}));
  await server.settled();
  await road.look();
};
const holds = () => road.screen.holds.map((h) => h.code);
const checks = async (of = road) => server.look((tx) => tx.fact.count({ where: { orderId: of.id, type: 'fitnessChecked' } }));
const operatorsLast = (day: string) => server.look((tx) => tx.accreditation.updateMany({ where: { staffId: road.slot.operator.id, protocol: 'hipLaxity' }, data: { until: new Date(day) } }));

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Alder', studies: [['hipLaxity', 'threnfold']], inDays: 7 });
  far = await Road.book(server, { dog: 'Ember', studies: [['hipLaxity', 'threnfold']], inDays: 20 });
}, 60_000);
afterAll(async () => { await server.close(); });

it('the look is taken every night', () => {
  expect(schedules).toContainEqual(expect.objectContaining({ job: 'look-ahead', cron: expect.stringMatching(/^\d+ \d+ \* \* \*$/) as string }));
});

it('nothing is written where nothing has changed', async () => {
  const before = await checks();
  await night();
  await night();
  expect([await checks(), holds().includes('NOT_FIT')]).toEqual([before, false]);
});

it('an accreditation that ends before the day holds the visit, with its ways out, and is written once', async () => {
  const before = await checks();
  await operatorsLast(addDays(road.slot.day, -1));
  await night();
  await night();
  expect(await checks()).toBe(before + 1);
  const told = server.mail.all.filter((m) => m.subject.includes('something has changed'));
  expect(told.map((m) => m.text)).toEqual([expect.stringContaining(road.screen.accession)]);
  expect(told[0]!.text).toMatch(/operator/);
  const hold = road.screen.holds.find((h) => h.code === 'NOT_FIT')!;
  expect(hold.rest).toMatch(/operator/);
  for (const way of ['book', 'leaveStudyOut', 'offerReferral']) expect(hold.ways).toContain(way);
  const offered = road.screen.next.filter((n) => n.allowed).map((n) => n.action);
  expect(offered).toEqual(expect.arrayContaining(['book', 'endStudy', 'offerReferral', 'checkFitness']));
});

it('a visit further off than fourteen days is left until it is near', async () => {
  const before = await checks(far);
  expect(before).toBe(1);
  await server.until(far.at(-13, '03:00'));
  await operatorsLast(addDays(road.slot.day, -1));
  await server.look((tx) => tx.accreditation.updateMany({ where: { staffId: far.slot.operator.id, protocol: 'hipLaxity' }, data: { until: new Date(addDays(far.slot.day, -1)) } }));
  await night();
  expect(await checks(far)).toBe(before + 1);
});

it('an accreditation that is renewed lifts the hold by itself', async () => {
  await operatorsLast(addDays(road.slot.day, 200));
  await night();
  expect(holds()).not.toContain('NOT_FIT');
});

it('a device whose check ends before the day holds it too', async () => {
  await server.look((tx) => tx.equipment.updateMany({ where: { kind: 'distractionDevice' }, data: { checkedUntil: new Date(addDays(road.slot.day, -1)) } }));
  await night();
  expect(road.screen.holds.find((h) => h.code === 'NOT_FIT')?.rest).toMatch(/equipment/);
  await server.look((tx) => tx.equipment.updateMany({ where: { kind: 'distractionDevice' }, data: { checkedUntil: new Date(addDays(road.slot.day, 90)) } }));
  await night();
  expect(holds()).not.toContain('NOT_FIT');
});

describe('a newer version of the protocol', () => {
  // Only for this test: the next version, with a text of its own.
  beforeAll(async () => {
    installStudies([{ ...findProtocol('hipLaxity', '2')!, version: '99', consentText: 'hip-laxity-99' }]);
    await night();
  });

  it('holds the study until somebody has read what changed, and then asks the owner again', async () => {
    expect(road.screen.holds.find((h) => h.code === 'PROTOCOL_CHANGED')!.ways).toEqual(expect.arrayContaining(['seeProtocolChange', 'leaveStudyOut']));
    await night();
    expect(await server.look((tx) => tx.fact.count({ where: { orderId: road.id, type: 'protocolChanged' } }))).toBe(1);
    const screen: OrderScreen = await road.act('desk', 'seeProtocolChange', road.study().id, {});
    expect(screen.studies[0]!.version).toBe('99');
    expect(holds()).not.toContain('PROTOCOL_CHANGED');
    expect(holds()).toContain('CONSENT_STUDY_MISSING');
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
