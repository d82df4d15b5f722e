import { setTimeout as pause } from 'node:timers/promises';
import type { DemoScheme } from '#seed/demo-scheme';
import type { Chance } from '../kills/chance.js';
import { MemoryWatch, percentile, trend } from './memory.js';
import { Person, type Asked } from './person.js';

export interface CrowdGround {
  people: number;
  seconds: number;
  urls: string[];
  scheme: DemoScheme;
  chance: Chance;
  processes: { name: string; pid: () => number }[];
  row: (name: string, value: number, unit: string) => void;
  say: (line: string) => void;
}

/** Between two things that a person does. */
const THINKING_MS = [1000, 5000] as const;
const SIGN_INS_AT_ONCE = 4;
const LOOK_MS = 1000;
/** What a process takes on while it gets going is no trend. */
const SETTLING = 0.3;

/** Many people at the desks for a while, at all apis; answers what was refused though it should not have been. */
export async function runCrowd({ people, seconds, urls, scheme, chance, processes, row, say }: CrowdGround): Promise<string[]> {
  const houses = Object.values(scheme.houses);
  const crowd = Array.from({ length: people }, (_, i) => new Person(urls[i % urls.length]!, `198.18.${i >> 8}.${i & 255}`, houses[i % houses.length]!, scheme, chance));
  for (let i = 0; i < crowd.length; i += SIGN_INS_AT_ONCE) await Promise.all(crowd.slice(i, i + SIGN_INS_AT_ONCE).map((p) => p.signIn()));
  say(`${people} people are signed in`);

  const watches = processes.map(({ name, pid }) => ({ name, watch: new MemoryWatch(pid()) }));
  const end = Date.now() + seconds * 1000;
  const walking = crowd.map(async (person) => {
    await pause(chance.below(THINKING_MS[1]));
    while (Date.now() < end) {
      await person.step();
      await pause(THINKING_MS[0] + chance.below(THINKING_MS[1] - THINKING_MS[0]));
    }
  });
  const watching = (async () => {
    while (Date.now() < end) {
      for (const { watch } of watches) watch.look();
      await pause(LOOK_MS);
    }
  })();
  await Promise.all([...walking, watching]);

  const asked = crowd.flatMap((p) => p.asked);
  latencies(asked, row);
  for (const { name, watch } of watches) {
    row(`memory of ${name} at the beginning`, watch.samples[0]!.mib, 'MiB');
    row(`memory of ${name} at the end`, watch.samples.at(-1)!.mib, 'MiB');
    row(`memory of ${name}, trend after the first ${SETTLING * 100} %`, trend(watch.samples.slice(Math.floor(watch.samples.length * SETTLING))), 'MiB/min');
  }
  return asked.filter((a) => !isFine(a)).map((a) => `${a.what}: ${a.status} ${a.words}`);
}

/** Done, or told honestly that somebody else was quicker. */
const isFine = ({ status }: Asked): boolean => (status >= 200 && status < 300) || status === 409;

function latencies(asked: Asked[], row: CrowdGround['row']): void {
  row('requests of people at once', asked.length, 'requests');
  row('of them told that somebody else was quicker (409)', asked.filter((a) => a.status === 409).length, 'requests');
  row('of them refused or broken otherwise', asked.filter((a) => !isFine(a)).length, 'requests');
  for (const what of ['all', ...new Set(asked.map((a) => a.what))]) {
    const times = asked.filter((a) => what === 'all' || a.what === what).map((a) => a.ms);
    for (const share of [0.5, 0.95, 0.99]) row(`time for ${what}, p${share * 100}`, percentile(times, share), 'ms');
  }
}
