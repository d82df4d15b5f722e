import type { ReachableDays } from '#libs/contracts/people';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { addDays } from '#libs/pathway/days';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { openLink, type Session } from '#test/support/session';
import { accept, getRead } from '#test/support/study-legs';
import { throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
let road: Road;
let owner: Session;

const codes = () => road.screen.holds.map((h) => h.code);
const letters = () => server.mail.to(road.email).filter((m) => /a letter from/.test(m.subject));
/** Days are counted from the visit, on a Tuesday. */
const at = async (day: number, time: string) => {
  await server.until(road.at(day, time));
  await server.sweep();
};
const week: ReachableDays = { weekdays: [1, 2, 3, 4, 5], closed: [], quietFrom: 20, quietTo: 8 };
const reachable = async (days: Partial<ReachableDays> = {}) => (await road.as('manager')).send<ReachableDays>('/api/practice/reachable', { ...week, ...days });

beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
  owner = await throughTheVisit(road);
  await getRead(road, road.study().id);
}, 90_000);
afterAll(async () => { await server.close(); });

describe('phone first', () => {
  it('is set by a vet, with the day by which the owner is called', async () => {
    expect((await road.attempt('desk', 'setPhoneFirst', road.study().id, { until: addDays(road.today, 2) })).status).toBe(403);
    expect((await road.attempt('vet', 'setPhoneFirst', road.study().id, { until: '2026-01-02' })).status).toBe(400);
    await road.act('vet', 'setPhoneFirst', road.study().id, { until: addDays(road.today, 2) });
    expect(road.screen.holds.find((h) => h.code === 'PHONE_FIRST')).toMatchObject({ by: addDays(road.today, 2) });
    expect(road.study().phoneFirst).toBe(addDays(road.today, 2));
  });

  it('holds the letter until the owner was reached, however often it rang', async () => {
    await accept(road, road.study().id);
    expect((await road.attempt('vet', 'releaseLetter', road.study().id, {})).status).toBe(422);
    await road.act('vet', 'recordCall', road.study().id, { reached: false });
    expect(codes()).toContain('PHONE_FIRST');
    await road.act('vet', 'recordCall', road.study().id, { reached: true });
    expect(codes()).not.toContain('PHONE_FIRST');
  });
});

describe('the practice’s days', () => {
  it('are set by its manager, and at least one day is reachable', async () => {
    expect((await (await road.as('desk')).post('/api/practice/reachable', week)).status).toBe(403);
    expect((await (await road.as('manager')).post('/api/practice/reachable', { ...week, weekdays: [] })).status).toBe(400);
    expect(await reachable()).toEqual(week);
    expect(await (await road.as('nurse')).read<ReachableDays>('/api/practice/reachable')).toEqual(week);
  });

  it('are told to the owner, who need choose nothing', async () => {
    expect((await owner.read<OwnerPage>('/api/owner')).letters).toEqual({ anyTime: false, reachable: 'between 8 and 20 o’clock, and not just before or on a Saturday or Sunday' });
  });
});

describe('a letter', () => {
  it('does not leave at night', async () => {
    await at(0, '21:30');
    await road.look();
    await road.act('vet', 'releaseLetter', road.study().id, {});
    await server.settled();
    await server.sweep();
    expect(letters()).toEqual([]);
    await road.look();
    expect(road.screen.messages.find((m) => m.kind === 'result')).toMatchObject({ state: 'waiting', detail: 'waits: NIGHT' });
  });

  it('does not leave on the day before one on which nobody is reached, nor on that day', async () => {
    await reachable({ closed: [addDays(road.slot.day, 2)] });
    for (const [day, time] of [[1, '10:00'], [1, '16:00'], [2, '10:00']] as const) {
      await at(day, time);
      expect([day, letters()]).toEqual([day, []]);
    }
    await road.look();
    expect(road.screen.messages.find((m) => m.kind === 'result')!.detail).toBe('waits: NOBODY_REACHABLE');
  });

  it('does not leave on a Friday or over the weekend', async () => {
    for (const day of [3, 4, 5]) {
      await at(day, '11:00');
      expect([day, letters()]).toEqual([day, []]);
    }
  });

  it('leaves at once, on a Sunday night too, when the owner would rather have it', async () => {
    await at(5, '22:00');
    expect(letters()).toEqual([]);
    const page = await owner.send<OwnerPage>('/api/owner/letter-time', { anyTime: true });
    expect(page.letters.anyTime).toBe(true);
    await at(5, '22:20');
    expect(letters()).toHaveLength(1);
    await expect(openLink(server.url, letters()[0]!)).resolves.toBeDefined();
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
