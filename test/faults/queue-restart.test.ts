import { startOnOwnPostgres, startOnRedis, type RestartableServer } from '#test/medium/queue-support/servers';
import { describeWithPeer } from '#test/support/peers';
import { FaultGround } from './fault-ground.js';

const DOGS = ['Nettle', 'Cinder', 'Corrie'];
/** As in the program itself: the worker lives, only its queue does not. */
const LOCK_SECONDS = 15;

describe('with the queue on a PostgreSQL of its own', () => survives(startOnOwnPostgres));
describeWithPeer('redis-server', 'with the queue on Redis, which keeps nothing', (program) => survives(() => startOnRedis(program)));

function survives(startQueue: () => Promise<RestartableServer>): void {
  let server: RestartableServer;
  let ground: FaultGround;

  beforeAll(async () => {
    server = await startQueue();
  }, 60_000);
  afterAll(() => server.stop());
  beforeEach(async () => {
    ground = await FaultGround.open(server, DOGS, { lockSeconds: LOCK_SECONDS });
    ground.mail.slow = false;
  }, 60_000);
  afterEach(() => ground.close());

  const waiting = () => ground.look((tx) => tx.message.findMany({ where: { notBefore: null, state: { in: ['waiting', 'claimed'] } }, select: { id: true } }));
  const delivered = (ids: string[]) => ground.until(async (tx) => (await tx.message.count({ where: { id: { in: ids }, state: 'delivered' } })) === ids.length);
  const messageIds = (ids: string[]) => ids.map((id) => `<${id}@cotyla.example>`).sort();

  it('that is killed and started again under a running worker: the worker goes on, what was written meanwhile is sent once, and schedules come back', async () => {
    const worker = await ground.startWorker();
    const first = (await waiting()).map((m) => m.id);
    await delivered(first);
    await ground.untilIdle();

    await server.kill();
    // Written while there is no queue: the same mails, as if nobody had sent them.
    const meanwhile = await ground.writeAgain(first);
    expect((await waiting()).map((m) => m.id).sort()).toEqual([...meanwhile].sort());
    await server.start();
    await delivered(meanwhile);

    expect(worker.exitCode ?? worker.signalCode).toBeNull();
    expect(ground.mail.taken.all.map((m) => m.messageId).sort()).toEqual(messageIds([...first, ...meanwhile]));
    const before = ground.done(worker, 'sweep');
    await ground.untilDone(worker, 'sweep', before + 1);
  }, 180_000);

  it('that is killed and started again while mails are on their way: each went once, and each is known', async () => {
    ground.mail.slow = true;
    const worker = await ground.startWorker();
    const ids = (await waiting()).map((m) => m.id);
    await ground.mail.begun.until((all) => all.length === ids.length);
    await server.kill();
    ground.mail.answerAll();
    await delivered(ids);
    await server.start();
    await ground.sweepLater(10);
    await ground.untilIdle();
    expect(ground.mail.begun.all.map((m) => m.messageId).sort()).toEqual(messageIds(ids));
    expect(worker.exitCode ?? worker.signalCode).toBeNull();
  }, 180_000);
}
