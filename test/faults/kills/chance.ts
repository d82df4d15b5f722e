/** Numbers that look drawn by lot and are the same for the same seed (mulberry32). */
export class Chance {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** From 0 up to, and without, 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let t = this.#state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  }

  below(most: number): number {
    return Math.floor(this.next() * most);
  }

  oneOf<T>(things: readonly T[]): T {
    return things[this.below(things.length)]!;
  }
}
