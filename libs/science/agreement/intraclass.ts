import { fQuantile } from '../distributions.js';
import type { Interval } from '../population/wilson.js';
import { type MeanSquares, meanSquares } from './mean-squares.js';

/** A correlation, and its interval where there is one: with no difference between the readers, or nothing else, there is none. */
export interface Intraclass { value: number; mayBe: Interval | null }

export interface SixIntraclass {
  films: number;
  readers: number;
  /** One reading of any reader; each film may have had other readers. */
  oneWay: { single: Intraclass; mean: Intraclass };
  /** Readers drawn from many: a reader who always reads higher counts as disagreement. The one for a scheme. */
  agreement: { single: Intraclass; mean: Intraclass };
  /** These readers only: one who always reads higher does no harm. */
  consistency: { single: Intraclass; mean: Intraclass };
}

/**
 * The six intraclass correlations: (1,1), (2,1), (3,1) of one reading and (1,k), (2,k), (3,k) of the mean of k, with
 * 95 % intervals. Null where all films were read alike, as nothing can be told apart then. They depend on how
 * different the films are: a round of easy films gives high ones.
 * Source: Shrout & Fleiss, Psychol Bull 1979;86:420-428.
 * @param table a number for each film (rows) from each reader (columns)
 * @throws ScienceError NOT_A_TABLE
 */
export function intraclass(table: readonly (readonly number[])[]): SixIntraclass | null {
  const ms = meanSquares(table);
  if (ms.between === 0 && ms.within === 0) return null;
  const { films: n, readers: k } = ms;
  const single = agreementInterval(ms);
  return {
    films: n,
    readers: k,
    oneWay: byRatio(ms, ms.within, n * (k - 1)),
    agreement: { single, mean: { value: meanAgreement(ms), mayBe: ofMean(single.mayBe, k) } },
    consistency: byRatio(ms, ms.error, (n - 1) * (k - 1)),
  };
}

function byRatio({ between, films, readers: k }: MeanSquares, noise: number, df: number) {
  const one = (ratio: number) => (ratio - 1) / (ratio + k - 1);
  const many = (ratio: number) => 1 - 1 / ratio;
  const single = { value: (between - noise) / (between + (k - 1) * noise), mayBe: null as Interval | null };
  const mean = { value: between === 0 ? -Infinity : (between - noise) / between, mayBe: null as Interval | null };
  if (noise > 0 && between > 0) {
    const lower = between / noise / fQuantile(0.975, films - 1, df);
    const upper = (between / noise) * fQuantile(0.975, df, films - 1);
    single.mayBe = { lower: one(lower), upper: one(upper) };
    mean.mayBe = { lower: many(lower), upper: many(upper) };
  }
  return { single, mean };
}

/** What an interval for one reader is for the mean of k; none where its lower end lies below what k readers can differ. */
function ofMean(single: Interval | null, k: number): Interval | null {
  if (!single || 1 + (k - 1) * single.lower <= 0) return null;
  const raised = (r: number) => (k * r) / (1 + (k - 1) * r);
  return { lower: raised(single.lower), upper: raised(single.upper) };
}

const meanAgreement = ({ between, ofReaders, error, films }: MeanSquares) => (between - error) / (between + (ofReaders - error) / films);

function agreementInterval({ between, ofReaders, error, films: n, readers: k }: MeanSquares): Intraclass {
  const value = (between - error) / (between + (k - 1) * error + (k * (ofReaders - error)) / n);
  if (error === 0 || between === 0) return { value, mayBe: null };
  const ratio = ofReaders / error;
  const rest = n * (1 + (k - 1) * value) - k * value;
  const df = ((k - 1) * (n - 1) * (k * value * ratio + rest) ** 2) / ((n - 1) * k ** 2 * value ** 2 * ratio ** 2 + rest ** 2);
  // Readers who differ far more than the films leave less than one degree of freedom: then every value is possible.
  if (!(df >= 1)) return { value, mayBe: null };
  const low = fQuantile(0.975, n - 1, df);
  const high = fQuantile(0.975, df, n - 1);
  const readersAndNoise = k * ofReaders + (k * n - k - n) * error;
  return {
    value,
    mayBe: { lower: (n * (between - low * error)) / (low * readersAndNoise + n * between), upper: (n * (high * between - error)) / (readersAndNoise + n * high * between) },
  };
}
