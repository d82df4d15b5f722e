import pg from 'pg';
import { resolveMessage } from '#libs/steps/messages/resolve-message';
import { FaultGround } from '#test/faults/fault-ground';
import { describeWithPeer } from '#test/support/peers';
import { startOnPostgres, startOnRedis, type QueueServer } from './queue-support/servers.js';

describe('with the queue on PostgreSQL', () => nothingIsLost(startOnPostgres));
describeWithPeer('redis-server', 'with the queue on Redis', (program) => nothingIsLost(() => startOnRedis(program, ['--appendonly', 'yes', '--appendfsync', 'always'])));

// A confirmation, a letter, a package: one of each kind of mail waits for a worker.
const DOGS = ['Nettle', 'Cinder', 'Corrie'];
const KINDS = ['confirmation', 'package', 'result'];

interface Mail { id: string; kind: string; state: string }

function nothingIsLost(startQueue: () => Promise<QueueServer>): void {
  let server: QueueServer;
  let ground: FaultGround;

  beforeAll(async () => {
    server = await startQueue();
  });
  afterAll(() => server.stop());
  beforeEach(async () => {
    ground = await FaultGround.open(server, DOGS);
  });
  afterEach(async () => {
    await ground.close();
    expect(ground.errors).toEqual([]);
  });

  const mails = (): Promise<Mail[]> => ground.look((tx) => tx.message.findMany({ where: { notBefore: null, kind: { in: KINDS }, doneAt: { gte: new Date(Date.now() - 60 * 60_000) } }, select: { id: true, kind: true, state: true }, orderBy: { kind: 'asc' } }));
  const waiting = (): Promise<Mail[]> => ground.look((tx) => tx.message.findMany({ where: { notBefore: null, state: { in: ['waiting', 'claimed'] } }, select: { id: true, kind: true, state: true }, orderBy: { kind: 'asc' } }));
  const messageIds = (all: Mail[]) => all.map((m) => `<${m.id}@cotyla.example>`).sort();

  describe('a worker that is killed while mails are on their way', () => {
    it('leaves mails whose outcome is not known, on their orders; none is sent again without a person’s decision', async () => {
      const before = await waiting();
      expect(before.map((m) => m.kind)).toEqual(KINDS);
      const doomed = await ground.startWorker();
      await ground.mail.begun.until((all) => all.length === before.length);
      await ground.kill(doomed);

      ground.mail.slow = false;
      await ground.startWorker();
      await ground.until(async (tx) => (await tx.message.count({ where: { state: 'unknown' } })) === before.length);
      expect((await mails()).map((m) => [m.kind, m.state])).toEqual(KINDS.map((kind) => [kind, 'unknown']));

      // Seen on the order, and for the letter and the package a fact of it.
      for (const [dog, kind] of [['Nettle', 'confirmation'], ['Cinder', 'result'], ['Corrie', 'package']] as const) {
        const { messages } = await ground.screen(dog);
        expect(messages.find((m) => m.kind === kind)).toMatchObject({ state: 'unknown', detail: expect.stringContaining('stopped') as unknown });
      }
      const outcomes = (dog: string, type: string) => ground.look(async (tx) => (await tx.fact.findMany({ where: { orderId: ground.road(dog).order, type }, select: { body: true } })).map((f) => (f.body as { outcome: string }).outcome));
      expect([await outcomes('Cinder', 'letterOutcome'), await outcomes('Corrie', 'sendOutcome')]).toEqual([['unknown'], ['unknown']]);
      expect((await ground.screen('Corrie')).holds.map((h) => h.code)).toContain('SEND_UNCERTAIN');

      // Whatever time brings, each began once and none went twice.
      await ground.sweepLater(10);
      await ground.sweepLater(60);
      await ground.untilIdle();
      expect(ground.mail.begun.all.map((m) => m.messageId).sort()).toEqual(messageIds(before));
      expect(ground.mail.taken.all).toEqual([]);
    }, 90_000);

    it('sends one again when a person says that it did not come, under the same Message-ID', async () => {
      const doomed = await ground.startWorker();
      await ground.mail.begun.until((all) => all.length === DOGS.length);
      await ground.kill(doomed);
      ground.mail.slow = false;
      await ground.startWorker();
      await ground.until(async (tx) => (await tx.message.count({ where: { state: 'unknown' } })) === DOGS.length);

      const { house, order } = ground.road('Nettle');
      const lost = (await ground.screen('Nettle')).messages.find((m) => m.state === 'unknown')!;
      await resolveMessage(ground.deps, house.desk, order, lost.id, false);
      const [sent] = await ground.mail.taken.until((all) => all.length === 1);
      expect(sent!.messageId).toBe(`<${lost.id}@cotyla.example>`);
      await ground.until(async (tx) => (await tx.message.count({ where: { id: lost.id, state: 'delivered' } })) === 1);
      await ground.untilIdle();
      expect(ground.mail.taken.all).toHaveLength(1);
    }, 90_000);
  });

  it('a job that was taken and not begun when its worker was killed is done once', async () => {
    ground.mail.slow = false;
    const before = await waiting();
    // Somebody holds the rows, so that every job stands before its first step.
    const holder = new pg.Client(ground.databaseUrl);
    await holder.connect();
    await holder.query('BEGIN');
    await holder.query('SET LOCAL ROLE app_system');
    await holder.query("SELECT 1 FROM message WHERE state = 'waiting' FOR UPDATE");
    const doomed = await ground.startWorker();
    await ground.until(async (tx) => (await tx.$queryRaw<{ n: bigint }[]>`SELECT count(*) AS n FROM pg_locks l JOIN pg_stat_activity a USING (pid) WHERE NOT l.granted AND a.datname = current_database()`)[0]!.n >= BigInt(before.length));
    await ground.kill(doomed);
    await holder.query('COMMIT');
    await holder.end();
    expect((await waiting()).map((m) => m.state)).toEqual(before.map(() => 'waiting'));

    await ground.startWorker();
    await ground.until(async (tx) => (await tx.message.count({ where: { id: { in: before.map((m) => m.id) }, state: 'delivered' } })) === before.length);
    await ground.untilIdle();
    expect(ground.mail.taken.all.map((m) => m.messageId).sort()).toEqual(messageIds(before));
  }, 90_000);

  it('a queue that is emptied with jobs waiting loses nothing: the database knows all that is due', async () => {
    ground.mail.slow = false;
    const before = await waiting();
    const papers = () => ground.look((tx) => tx.document.count({ where: { pdfSha: null } }));
    const unprinted = await papers();
    expect(unprinted).toBeGreaterThan(0);
    expect(await ground.relay()).toBeGreaterThan(before.length);
    const counts = await ground.withQueue((queue) => queue.counts());
    expect(counts.send.waiting).toBe(before.length);

    await server.empty();
    expect(await ground.withQueue(async (queue) => Object.values(await queue.counts()).every((c) => c.waiting === 0))).toBe(true);
    expect((await waiting()).map((m) => m.id)).toEqual(before.map((m) => m.id));
    await ground.sweepLater(5);
    await ground.startWorker();
    await ground.until(async (tx) => (await tx.message.count({ where: { id: { in: before.map((m) => m.id) }, state: 'delivered' } })) === before.length);
    await ground.untilIdle();
    expect(ground.mail.taken.all.map((m) => m.messageId).sort()).toEqual(messageIds(before));
    expect(await papers()).toBe(0);
  }, 90_000);

  it('a queue that is emptied while mails are on their way leaves them known to be not known', async () => {
    const before = await waiting();
    const doomed = await ground.startWorker();
    await ground.mail.begun.until((all) => all.length === before.length);
    await ground.kill(doomed);
    await server.empty();
    ground.mail.slow = false;
    await ground.startWorker();
    await ground.sweepLater(5);
    await ground.until(async (tx) => (await tx.message.count({ where: { id: { in: before.map((m) => m.id) }, state: 'unknown' } })) === before.length);
    await ground.untilIdle();
    expect(ground.mail.taken.all).toEqual([]);
  }, 90_000);
}
