import { z } from 'zod';
import { defineJob } from './job-definition.js';
import { JobRegistry } from './job-registry.js';
import { JobWorkers } from './job-workers.js';
import { openQueueConnection } from './queue-connection.js';

const common = { queue: 'work', retry: { attempts: 3, backoffSeconds: 5 }, keep: { doneHours: 24, failedDays: 30 } } as const;
const draw = defineJob({ name: 'draw-plan', payload: z.object({ planId: z.string() }), ...common });
const send = defineJob({ name: 'send-letter', payload: z.object({ letterId: z.string() }), ...common });

describe('the list of jobs', () => {
  it('refuses two jobs of one name', () => {
    expect(() => new JobRegistry([draw, draw])).toThrow('Two jobs are named "draw-plan".');
  });

  it('refuses a payload that is not what the job asks for, and says where', () => {
    expect(() => new JobRegistry([draw]).parse('draw-plan', { planId: 7 })).toThrow(/"draw-plan" is wrong: planId/);
  });

  it('refuses personal data in a payload', () => {
    expect(() => new JobRegistry([draw]).parse('draw-plan', { planId: 'Ona Veld <ona@veld.example>' })).toThrow('may hold ids only; "planId" is none');
  });

  it('drops what the job did not ask for', () => {
    expect(new JobRegistry([draw]).parse('draw-plan', { planId: 'p-1', more: 'x' })).toEqual({ planId: 'p-1' });
  });
});

describe('start-up', () => {
  const connection = openQueueConnection({ backend: 'redis', url: 'redis://127.0.0.1:1', onError: (error) => { throw error; } });
  const workers = () => new JobWorkers(new JobRegistry([draw, send]), connection, { onGaveUp: async () => {}, onError: () => {} });

  it('fails when a job has no handler', async () => {
    await expect(workers().handle('draw-plan', async () => {}).start()).rejects.toThrow('No handler for: send-letter.');
  });

  it('fails when a job has two handlers', () => {
    expect(() => workers().handle('draw-plan', async () => {}).handle('draw-plan', async () => {})).toThrow('The job "draw-plan" has two handlers.');
  });

  it('fails when a handler has no job', () => {
    expect(() => workers().handle('draw-planet' as 'draw-plan', async () => {})).toThrow('"draw-planet", which is no job');
  });
});
