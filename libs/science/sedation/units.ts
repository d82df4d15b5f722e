import { ScienceError } from '../error.js';

export const doseUnits = ['mg/kg', 'µg/kg', 'mg/m²', 'µg/m²'] as const;
export type DoseUnit = (typeof doseUnits)[number];

export const concentrationUnits = ['mg/mL', 'µg/mL'] as const;
export type ConcentrationUnit = (typeof concentrationUnits)[number];

/** Smallest step of the syringe, in mL. */
export const syringeSteps = [0.01, 0.05, 0.1, 0.5] as const;
export type SyringeStep = (typeof syringeSteps)[number];

/**
 * Finds the unit meant by "ug/kg", "mcg/kg" or a Greek letter mu.
 * @throws ScienceError UNIT_UNKNOWN
 */
export function parseUnit<U extends string>(text: string, known: readonly U[]): U {
  const plain = text.trim().replace(/\s+/g, '').replace(/^(?:mcg|ug|\u03bcg)/i, 'µg').replace(/m2$/i, 'm²').replace(/ml$/i, 'mL');
  const unit = known.find((candidate) => candidate === plain);
  if (!unit) throw new ScienceError('UNIT_UNKNOWN', `"${text}" is no unit here. Use ${known.join(', ')}.`);
  return unit;
}

/** Micrograms in one mg or µg. */
export function microgramsIn(unit: DoseUnit | ConcentrationUnit): number {
  return unit.startsWith('mg') ? 1000 : 1;
}

/**
 * A number as it may be written beside a drug: never ".3", never "0.30", never "1e-7";
 * six significant digits at most.
 */
export function writeNumber(value: number): string {
  const rounded = Number(value.toPrecision(6));
  const text = rounded.toFixed(Math.max(0, 5 - Math.floor(Math.log10(Math.abs(rounded) || 1))));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** A number and its unit, which never part: "0.3 mL". */
export function writeAmount(value: number, unit: string): string {
  return `${writeNumber(value)} ${unit}`;
}
