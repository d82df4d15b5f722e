import type { Protocol } from './types.js';

export type SecondLook = { from: number; to: number; source: string } | { none: string };

const Z95 = 1.959963985;

/** Standard error of measurement, in the value's unit: SD·√(1−ICC). */
export function standardError(sd: number, icc: number): number {
  return sd * Math.sqrt(1 - icc);
}

/** In 95 of 100 pairs two looks differ by less than this: 1.96·√2·SEM, because both carry the error. */
export function smallestRealChange(sem: number): number {
  return Z95 * Math.SQRT2 * sem;
}

/**
 * Between which values a second examination of the same dog would mostly fall (95 of 100),
 * rounded to the protocol's decimals and kept inside its range.
 */
export function secondLook(protocol: Protocol, value: number | string): SecondLook {
  const { repeatability, value: rule } = protocol;
  if (!repeatability.known) return { none: repeatability.reason };
  if (rule.kind !== 'number' || typeof value !== 'number') return { none: 'Only a measured value has a margin.' };
  const margin = smallestRealChange(standardError(repeatability.sd, repeatability.icc));
  const round = (x: number) => Number(Math.min(rule.max, Math.max(rule.min, x)).toFixed(rule.decimals));
  return { from: round(value - margin), to: round(value + margin), source: repeatability.citation };
}
