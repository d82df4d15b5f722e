import { EventEmitter, once } from 'node:events';

/** Collects what happens and lets a test wait for it, never for time. */
export class Happenings<T> {
  readonly all: T[] = [];
  readonly #events = new EventEmitter();

  add(happening: T): void {
    this.all.push(happening);
    this.#events.emit('more');
  }

  /** Resolves as soon as the condition holds; the test's own time limit is the deadline. */
  async until(condition: (all: T[]) => boolean): Promise<T[]> {
    while (!condition(this.all)) await once(this.#events, 'more');
    return this.all;
  }
}
