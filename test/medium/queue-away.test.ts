import { JobQueue } from '#libs/platform/queue/job-queue';
import { openQueueConnection } from '#libs/platform/queue/queue-connection';
import { describeWithPeer } from '#test/support/peers';
import { startOnRedis } from './queue-support/servers.js';
import { testRegistry } from './queue-support/test-jobs.js';

describeWithPeer('redis-server', 'when Redis goes away', (program) => {
  it('adding a job fails at once instead of waiting, so that its row stays in the outbox', async () => {
    const server = await startOnRedis(program);
    const heard: Error[] = [];
    const connection = openQueueConnection({ ...server.settings, onError: (error) => heard.push(error) });
    const queue = new JobQueue(testRegistry, connection, (error) => heard.push(error));
    await queue.add('send-letter', { letterId: 'l-1' });
    await server.stop();
    await expect(queue.add('send-letter', { letterId: 'l-2' })).rejects.toThrow();
    expect(heard.length).toBeGreaterThan(0);
    await queue.close();
    await connection.close();
  });
});
