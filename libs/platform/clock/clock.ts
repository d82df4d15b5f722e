/** Where the time comes from, so that a test can stand on any day. */
export interface Clock {
  now(): Date;
}

export const systemClock: Clock = { now: () => new Date() };
