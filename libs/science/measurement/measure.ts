/** The 97.5th percentile of the normal distribution: in 95 of 100 repeats the truth lies within this many standard errors. */
export const Z95 = 1.959963984540054;

/** A measured value with what is known of its error. */
export interface Measure {
  value: number;
  standardError: number;
  /** Ends of the 95 % interval, in the value's unit. */
  from: number;
  to: number;
}

export const measure = (value: number, standardError: number): Measure => ({ value, standardError, from: value - Z95 * standardError, to: value + Z95 * standardError });
