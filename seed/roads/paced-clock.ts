import { TestClock } from '#libs/platform/clock/test-clock';

const SECONDS = { seconds: 1, minutes: 60, hours: 3_600, days: 86_400 };

/** A clock whose steps can be drawn together, for a day that has only just begun. */
export class PacedClock extends TestClock {
  readonly #pace: number;

  constructor(start: Date, pace = 1) {
    super(start);
    this.#pace = pace;
  }

  override advance(by: Partial<Record<keyof typeof SECONDS, number>>): void {
    const seconds = (Object.keys(SECONDS) as (keyof typeof SECONDS)[]).reduce((sum, unit) => sum + (by[unit] ?? 0) * SECONDS[unit], 0);
    super.advance({ seconds: seconds * this.#pace });
  }
}
