import { setTimeout as pause } from 'node:timers/promises';

/** Seconds before each start again; who ends once more after the last is given up. */
const PAUSES = [1, 2, 4, 8, 16];
/** Who has run this long starts with the shortest pause again. */
const SETTLED_SECONDS = 60;

const ordinal = (n) => `${n}${{ 1: 'st', 2: 'nd', 3: 'rd' }[n] ?? 'th'}`;

/**
 * A process that is started again when it ends by itself, each time a little later. Before `trust` is called, and when it
 * ends again and again, `ended` says so and it is left.
 */
export function keep(start, { say, onStart, pauses = PAUSES, settledSeconds = SETTLED_SECONDS }) {
  let child = start();
  let trusted = false;
  const stopping = new AbortController();

  const ended = (async () => {
    for (let again = 0; ; again++) {
      const since = Date.now();
      const how = await child.ended;
      if (stopping.signal.aborted) return how;
      if (Date.now() - since >= settledSeconds * 1000) again = 0;
      if (!trusted) return how;
      if (again === pauses.length) return `${how}, for the ${ordinal(pauses.length + 1)} time in a row`;
      say(`The ${child.name} ${how}. It is started again in ${pauses[again]} s.`);
      await pause(pauses[again] * 1000, undefined, { signal: stopping.signal }).catch(() => {});
      if (stopping.signal.aborted) return how;
      child = start();
      onStart();
    }
  })();

  return {
    name: child.name,
    get pid() { return child.pid; },
    ended,
    trust: () => { trusted = true; },
    stop: async () => {
      stopping.abort();
      await child.stop();
    },
  };
}
