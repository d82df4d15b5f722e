/** Choices that follow from one seed, so that a case found once can be run again. */
export class Chooser {
  constructor(private state: number) {}

  below(limit: number): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % limit;
  }

  bool(): boolean {
    return this.below(2) === 0;
  }

  of<T>(options: readonly T[]): T {
    if (options.length === 0) throw new RangeError('Nothing to choose from.');
    return options[this.below(options.length)] as T;
  }
}
