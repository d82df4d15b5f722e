import { z } from 'zod';
import { defineJob } from '#libs/platform/queue/job-definition';
import { JobRegistry } from '#libs/platform/queue/job-registry';

const keep = { doneHours: 24, failedDays: 30 };

export const testJobs = [
  defineJob({ name: 'send-letter', queue: 'send', payload: z.object({ letterId: z.string() }), retry: { attempts: 3, backoffSeconds: 0.02 }, keep }),
  defineJob({ name: 'draw-plan', queue: 'work', payload: z.object({ planId: z.string() }), retry: { attempts: 1, backoffSeconds: 1 }, keep, postponeAtMost: 3 }),
  defineJob({ name: 'find-due', queue: 'sweep', payload: z.object({}), retry: { attempts: 1, backoffSeconds: 1 }, keep }),
] as const;

export const testRegistry = new JobRegistry(testJobs);
