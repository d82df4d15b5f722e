import { startOnPostgres, startOnRedis, type QueueServer } from '#test/medium/queue-support/servers';
import { describeWithPeer } from '#test/support/peers';
import { putClock } from '#test/support/killable';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { accept, dispatch, readings } from '#test/support/study-legs';
import { admit, goHome, image, ownerSigns, sedate } from '#test/support/visit-legs';
import { FaultGround } from './fault-ground.js';
import { halfWritten, mailFigures } from './kills/aftermath.js';

const HOUR = 60;
const DAY = 24 * HOUR;

describe('the program’s clock jumps while a dog walks the road', () => {
  let server: RunningServer;
  let road: Road;
  beforeAll(async () => {
    server = await startServer();
  }, 60_000);
  afterAll(() => server.close());

  /** How many jobs have ever been asked for. */
  const outbox = () => server.look(async (tx) => Number((await tx.$queryRaw<{ n: bigint }[]>`SELECT max(id) AS n FROM outbox`)[0]!.n));

  /** Forward or back, and all that the schedule makes of it; at a clock that stands still it finds the second time no more than the first. */
  async function jump(minutes: number): Promise<void> {
    await server.settled();
    server.clock.advance({ minutes });
    await server.look((tx) => tx.$executeRaw`SELECT pg_notify('outbox', '')`);
    await server.settled();
    await server.sweep();
    const before = await outbox();
    await server.sweep();
    expect(await outbox() - before).toBe(0);
  }

  it('forward and back by hours and weeks: every leg can be walked, nothing is lost or half-written, and each mail goes once', async () => {
    road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
    await jump(-2 * HOUR);
    await ownerSigns(road);
    await jump(2 * HOUR);
    await road.untilVisit();
    await admit(road);
    await jump(-40);
    await sedate(road);
    await jump(25);
    await image(road);
    await jump(-90);
    await goHome(road);
    await jump(3 * HOUR);
    const reader = await dispatch(road, road.study().id);
    await jump(-5 * HOUR);
    await reader.acknowledge();
    await jump(30 * DAY);
    const chased = () => server.mail.all.filter((m) => /waiting for/.test(m.subject)).length;
    const reminders = chased();
    await jump(-29 * DAY);
    await jump(29 * DAY);
    expect(chased()).toBe(reminders);
    await jump(-30 * DAY);
    await reader.reads({ joints: readings.elbow! });
    await road.look('vet');
    await accept(road, road.study().id);
    await road.act('vet', 'releaseLetter', road.study().id, {});
    await jump(2 * DAY);
    await jump(-1 * DAY);

    const facts = await server.look((tx) => tx.fact.findMany({ where: { orderId: road.id }, orderBy: { rec: 'asc' }, select: { id: true, rec: true } }));
    expect(new Set(facts.map((f) => f.rec.getTime())).size).toBeGreaterThan(1);
    expect((await road.look()).version).toBe(facts.length);
    // At the furthest that the clock has been, everything has had its time.
    await jump(3 * DAY);
    expect(await halfWritten((work) => server.look(work), server.clock.now())).toEqual([]);
    const mails = await server.look((tx) => mailFigures(tx, server.mail.all.map((m) => m.messageId), [road.id], server.clock.now()));
    expect({ lost: mails.lost, twice: mails.twice, unknown: mails.unknown }).toEqual({ lost: [], twice: [], unknown: 0 });
    expect(mails.delivered).toBeGreaterThan(3);
    expect(server.errors).toEqual([]);
  }, 150_000);
});

describe('the clock of a worker’s machine jumps, with the queue on PostgreSQL', () => schedulesGoOn(startOnPostgres));
describeWithPeer('redis-server', 'the clock of a worker’s machine jumps, with the queue on Redis', (program) => schedulesGoOn(() => startOnRedis(program)));

function schedulesGoOn(startQueue: () => Promise<QueueServer>): void {
  let server: QueueServer;
  let ground: FaultGround;
  beforeAll(async () => {
    server = await startQueue();
    ground = await FaultGround.open(server, ['Nettle'], { lockSeconds: 60 });
    ground.mail.slow = false;
  }, 90_000);
  afterAll(async () => {
    await ground.close();
    await server.stop();
  });

  it('two days forward and back again: the sweep neither storms nor stops, and each mail goes once', async () => {
    const worker = await ground.startWorker();
    const swept = () => ground.done(worker, 'sweep');
    await ground.untilDone(worker, 'sweep', 1);
    await ground.untilIdle();

    const before = swept();
    await putClock(worker, 2 * DAY);
    await ground.untilDone(worker, 'sweep', before + 1);
    await ground.untilDone(worker, 'sweep', before + 2);
    // Thousands of turns lie in two days; they are not made up for.
    expect(swept() - before).toBeLessThan(6);

    const forward = swept();
    await putClock(worker, 0);
    await ground.untilDone(worker, 'sweep', forward + 2);
    expect(swept() - forward).toBeLessThan(6);
    await ground.untilIdle();
    const ids = ground.mail.taken.all.map((m) => m.messageId);
    expect(ids.length).toBeGreaterThan(0);
    expect(new Set(ids).size).toBe(ids.length);
  }, 180_000);
}
