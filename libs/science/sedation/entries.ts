import { ScienceError } from '../error.js';
import { type ConcentrationUnit, type SyringeStep, syringeSteps } from './units.js';

/** Lightest and heaviest dog taken without asking for the decimal point; our own choice, no source. */
const LIGHTEST_KG = 0.2;
const HEAVIEST_KG = 150;

export interface Concentration {
  value: number;
  unit: ConcentrationUnit;
}

/** @throws ScienceError WEIGHT */
export function checkWeight(weightKg: number): void {
  if (!Number.isFinite(weightKg) || weightKg <= 0) throw new ScienceError('WEIGHT', 'Enter today’s weight in kg, above 0.');
  if (weightKg < LIGHTEST_KG || weightKg > HEAVIEST_KG) {
    throw new ScienceError('WEIGHT', `${weightKg} kg is no dog’s weight. Check the decimal point: ${LIGHTEST_KG} to ${HEAVIEST_KG} kg are taken.`);
  }
}

/** @throws ScienceError under the given code */
export function checkPositive(code: string, name: string, value: number): void {
  if (!Number.isFinite(value) || value <= 0) throw new ScienceError(code, `Enter the ${name} as a number above 0.`);
}

/** @throws ScienceError SYRINGE */
export function checkSyringe(step: number): asserts step is SyringeStep {
  if (!syringeSteps.some((known) => known === step)) {
    throw new ScienceError('SYRINGE', `Choose the smallest step of the syringe: ${syringeSteps.join(', ')} mL.`);
  }
}
