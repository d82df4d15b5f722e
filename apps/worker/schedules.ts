import type { Schedule } from '#libs/platform/queue/schedule';
import type { Jobs } from '#libs/steps/jobs';

/** Everything that happens by the clock, and nothing else does. */
export const schedules: Schedule<Jobs>[] = [
  { id: 'sweep', job: 'sweep', payload: {}, everySeconds: 30 },
  { id: 'look-ahead', job: 'look-ahead', payload: {}, cron: '15 1 * * *', timeZone: 'UTC' },
  // Once a year; asked daily, so that a server that stood still on one day misses nothing.
  { id: 'freeze-sets', job: 'freeze-sets', payload: {}, cron: '40 2 * * *', timeZone: 'UTC' },
];
