import type { Clock } from './clock.js';

const MS = { seconds: 1000, minutes: 60_000, hours: 3_600_000, days: 86_400_000 };

/** Stands still until it is told to move; it may also go back, as real clocks do. */
export class TestClock implements Clock {
  #now: number;

  constructor(start: string | Date) {
    this.#now = TestClock.#read(start);
  }

  now(): Date {
    return new Date(this.#now);
  }

  set(moment: string | Date): void {
    this.#now = TestClock.#read(moment);
  }

  advance(by: Partial<Record<keyof typeof MS, number>>): void {
    for (const unit of Object.keys(MS) as (keyof typeof MS)[]) this.#now += (by[unit] ?? 0) * MS[unit];
  }

  static #read(moment: string | Date): number {
    const time = new Date(moment).getTime();
    if (Number.isNaN(time)) throw new RangeError(`Not a moment in time: ${String(moment)}`);
    return time;
  }
}
