import { Z95, type Interval } from './wilson.js';

/** How many dogs of a birth year have a value. */
export interface YearValue { year: number; value: number; dogs: number }

export interface Trend {
  /** Change of the value from one birth year to the next, in the value's unit. */
  perYear: number;
  /** 95 % interval of it. */
  interval: Interval;
  from: number;
  to: number;
  n: number;
}

/** Our own choice, no source: fewer dogs or years make a line that says more than is known. */
const FEWEST_DOGS = 60;
const FEWEST_YEARS = 4;

/**
 * The straight line of values on birth years by least squares, with the interval of its slope from the normal
 * distribution, which is close from 60 dogs on. It describes those whose films were sent: a line may fall because
 * the dogs change, or because other dogs are sent. Null below 60 dogs or 4 years.
 */
export function trend(values: readonly YearValue[]): Trend | null {
  const n = values.reduce((sum, v) => sum + v.dogs, 0);
  const years = [...new Set(values.filter((v) => v.dogs > 0).map((v) => v.year))].sort((a, b) => a - b);
  if (n < FEWEST_DOGS || years.length < FEWEST_YEARS) return null;
  const mean = (of: (v: YearValue) => number) => values.reduce((sum, v) => sum + v.dogs * of(v), 0) / n;
  const [year, value] = [mean((v) => v.year), mean((v) => v.value)];
  const sum = (of: (v: YearValue) => number) => values.reduce((total, v) => total + v.dogs * of(v), 0);
  const spread = sum((v) => (v.year - year) ** 2);
  const perYear = sum((v) => (v.year - year) * (v.value - value)) / spread;
  const left = sum((v) => (v.value - value - perYear * (v.year - year)) ** 2);
  const half = Z95 * Math.sqrt(left / (n - 2) / spread);
  return { perYear, interval: { lower: perYear - half, upper: perYear + half }, from: years[0]!, to: years.at(-1)!, n };
}
