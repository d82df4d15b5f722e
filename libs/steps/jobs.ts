import { z } from 'zod';
import { defineJob } from '#libs/platform/queue/job-definition';
import { JobRegistry } from '#libs/platform/queue/job-registry';

const keep = { doneHours: 24, failedDays: 30 };
const patient = { attempts: 8, backoffSeconds: 20 };

/** Everything that happens after a commit. A payload is ids; what to say or print stands in the database. */
export const jobs = new JobRegistry([
  defineJob({ name: 'send-message', queue: 'send', payload: z.object({ message: z.uuid() }), retry: patient, keep }),
  defineJob({ name: 'deliver-package', queue: 'deliver', payload: z.object({ order: z.uuid(), send: z.uuid() }), retry: patient, keep }),
  defineJob({ name: 'print-document', queue: 'work', payload: z.object({ document: z.uuid() }), retry: { attempts: 4, backoffSeconds: 5 }, keep }),
  defineJob({ name: 'copy-consents', queue: 'work', payload: z.object({ order: z.uuid() }), retry: { attempts: 4, backoffSeconds: 5 }, keep }),
  defineJob({ name: 'wake-order', queue: 'work', payload: z.object({ order: z.uuid() }), retry: { attempts: 4, backoffSeconds: 5 }, keep }),
  defineJob({ name: 'chase-study', queue: 'work', payload: z.object({ order: z.uuid(), study: z.uuid() }), retry: { attempts: 4, backoffSeconds: 10 }, keep }),
  defineJob({ name: 'note-erased', queue: 'work', payload: z.object({ person: z.uuid() }), retry: { attempts: 4, backoffSeconds: 5 }, keep }),
  defineJob({ name: 'write-tombstones', queue: 'work', payload: z.object({}), retry: patient, keep }),
  defineJob({ name: 'end-sharing', queue: 'work', payload: z.object({ order: z.uuid(), practice: z.uuid() }), retry: patient, keep }),
  defineJob({ name: 'draw-preview', queue: 'work', payload: z.object({ image: z.string().length(64) }), retry: { attempts: 4, backoffSeconds: 5 }, keep }),
  defineJob({ name: 'answer-commitment', queue: 'send', payload: z.object({ practice: z.uuid(), commitment: z.uuid() }), retry: patient, keep }),
  defineJob({ name: 'try-channel', queue: 'call', payload: z.object({ trial: z.uuid() }), retry: { attempts: 3, backoffSeconds: 5 }, keep }),
  // Its tries and pauses stand in the database; the queue's own are for what breaks on the way.
  defineJob({ name: 'send-webhook', queue: 'call', payload: z.object({ delivery: z.uuid() }), retry: { attempts: 4, backoffSeconds: 20 }, keep }),
  defineJob({ name: 'look-ahead', queue: 'sweep', payload: z.object({}), retry: { attempts: 3, backoffSeconds: 60 }, keep }),
  defineJob({ name: 'check-ahead', queue: 'work', payload: z.object({ order: z.uuid() }), retry: { attempts: 4, backoffSeconds: 10 }, keep }),
  defineJob({ name: 'offer-slots', queue: 'work', payload: z.object({ practice: z.uuid() }), retry: { attempts: 4, backoffSeconds: 10 }, keep }),
  defineJob({ name: 'freeze-sets', queue: 'sweep', payload: z.object({ lead: z.uuid().optional() }), retry: { attempts: 3, backoffSeconds: 60 }, keep }),
  defineJob({ name: 'sweep', queue: 'sweep', payload: z.object({}), retry: { attempts: 1, backoffSeconds: 1 }, keep: { doneHours: 1, failedDays: 3 } }),
] as const);

export type Jobs = (typeof jobs)['jobs'];
