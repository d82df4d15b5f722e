import type { NumberRule } from './types.js';

/** Beyond this many standard errors a reading is far from the estimate: one in a thousand by chance, on two sides. */
const FAR = 3.29;
const NEAR = 1.96;

/**
 * Whether a read value is far from an estimate and would fit it with two neighbouring digits exchanged or the point moved
 * by one place. What may have been meant is said; nothing is corrected.
 * @param sd standard deviation of the difference of the two, above 0, in the value's unit
 * @returns the value that would fit, or undefined
 */
export function digitSlipped(rule: NumberRule, value: number, estimate: number, sd: number): number | undefined {
  const off = (other: number) => Math.abs(other - estimate) / sd;
  if (off(value) <= FAR) return undefined;
  return slips(rule, value).filter((other) => other !== value && other >= rule.min && other <= rule.max && off(other) <= NEAR).sort((a, b) => off(a) - off(b))[0];
}

function slips({ decimals }: NumberRule, value: number): number[] {
  const digits = value.toFixed(decimals).replace('.', '');
  const scale = 10 ** decimals;
  const exchanged = [...digits].slice(1).map((_, i) => Number(digits.slice(0, i) + digits[i + 1]! + digits[i]! + digits.slice(i + 2)) / scale);
  return [...exchanged, Number((value * 10).toFixed(decimals)), Number((value / 10).toFixed(decimals))];
}
