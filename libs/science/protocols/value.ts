import { inEnglish, isFigure, said, type Figure, type Said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import type { ValueRule } from './types.js';

/** A value as it is written, in any language: "0.40", "12.5 mm", "grade C1". */
export function saidValue(rule: ValueRule, value: number | string): Said | Figure {
  if (rule.kind === 'grade') return said('{grade} {code}', { grade: said(rule.name), code: String(value) });
  return { number: Number(value), decimals: rule.decimals, unit: rule.unit && ` ${rule.unit}` };
}

/** The same in English. */
export function formatValue(rule: ValueRule, value: number | string): string {
  const written = saidValue(rule, value);
  return isFigure(written) ? `${written.number.toFixed(written.decimals)}${written.unit}` : inEnglish(written);
}

/**
 * Place of a value on its rule's order, for comparing only: places of grades are not measures.
 * @throws ScienceError NOT_ON_SCALE
 */
export function placeOf(rule: ValueRule, value: number | string): number {
  const place = rule.kind === 'grade' ? rule.grades.findIndex(({ code }) => code === value) : typeof value === 'number' ? value : NaN;
  if (place === -1 || !Number.isFinite(place)) throw new ScienceError('NOT_ON_SCALE', `"${value}" is not a ${rule.name} of this protocol. Check the reading first.`);
  return place;
}

/** The worse of two values; the first when they are equal. */
export function worseOf<V extends number | string>(rule: ValueRule, a: V, b: V): V {
  return placeOf(rule, b) > placeOf(rule, a) ? b : a;
}
