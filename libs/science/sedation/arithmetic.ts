import { ScienceError } from '../error.js';
import { bodySurface, type SurfaceConstant } from './body-surface.js';
import { checkPositive, checkSyringe, checkWeight, type Concentration } from './entries.js';
import { type DoseUnit, microgramsIn, type SyringeStep, writeAmount, writeNumber } from './units.js';

/** What the veterinarian entered. Nothing here has a default and nothing knows a drug. */
export interface VolumeEntry {
  dose: { value: number; unit: DoseUnit };
  /** Today's weight. */
  weightKg: number;
  concentration: Concentration;
  syringeStepMl: SyringeStep;
  /** Only for a dose per m². */
  surfaceConstant?: SurfaceConstant;
}

export interface VolumeAnswer {
  /** mL, before rounding. */
  exactMl: number;
  /** mL, to the syringe's step, halves up. */
  volumeMl: number;
  /** "0.33 mL" */
  volume: string;
  /** What the rounded volume gives, in the unit entered: "5.08 µg/kg". */
  given: string;
  /** How much more (+) or less (−) than entered the rounding gives, in per cent. */
  roundingPercent: number;
  /** Every step of the arithmetic, one line each, units with every value. */
  steps: string[];
}

/**
 * Volume to draw for the dose, weight and concentration that the veterinarian entered.
 * @throws ScienceError DOSE, WEIGHT, CONCENTRATION, SYRINGE, SURFACE_CONSTANT, TOO_SMALL
 */
export function volumeFor(entry: VolumeEntry): VolumeAnswer {
  const { dose, concentration, syringeStepMl } = entry;
  checkPositive('DOSE', 'dose', dose.value);
  checkPositive('CONCENTRATION', 'concentration', concentration.value);
  checkSyringe(syringeStepMl);
  const base = sizeOf(dose.unit, entry.weightKg, entry.surfaceConstant);

  const micrograms = dose.value * microgramsIn(dose.unit) * base.size;
  const perMl = concentration.value * microgramsIn(concentration.unit);
  const exactMl = micrograms / perMl;
  const volumeMl = roundToStep(exactMl, syringeStepMl);
  if (volumeMl === 0) {
    throw new ScienceError('TOO_SMALL', `${writeAmount(exactMl, 'mL')} cannot be drawn in steps of ${writeAmount(syringeStepMl, 'mL')}. The veterinarian in charge decides on another syringe or concentration.`);
  }
  const volume = writeAmount(volumeMl, 'mL');
  const givenValue = (volumeMl * perMl) / base.size / microgramsIn(dose.unit);
  const given = writeAmount(Number(givenValue.toPrecision(4)), dose.unit);
  const roundingPercent = Number(((volumeMl / exactMl - 1) * 100).toFixed(1));
  return {
    exactMl,
    volumeMl,
    volume,
    given,
    roundingPercent,
    steps: [
      ...base.steps,
      `${writeAmount(dose.value, dose.unit)} × ${writeAmount(base.size, base.unit)} = ${mass(micrograms)}`,
      `${mass(micrograms)} ÷ ${concentrationInWords(concentration)} = ${writeAmount(exactMl, 'mL')}`,
      `To the syringe’s step of ${writeAmount(syringeStepMl, 'mL')}: ${volume}`,
      `${volume} gives ${given} (${change(roundingPercent)})`,
    ],
  };
}

/** The way back: what was in the syringe. */
export interface DoseEntry {
  volumeMl: number;
  weightKg: number;
  concentration: Concentration;
  /** Unit to answer in. */
  unit: DoseUnit;
  surfaceConstant?: SurfaceConstant;
}

/**
 * Dose that a drawn volume gives.
 * @throws ScienceError VOLUME, WEIGHT, CONCENTRATION, SURFACE_CONSTANT
 */
export function doseFromVolume(entry: DoseEntry): { value: number; dose: string; steps: string[] } {
  const { volumeMl, concentration, unit } = entry;
  checkPositive('VOLUME', 'volume in mL', volumeMl);
  checkPositive('CONCENTRATION', 'concentration', concentration.value);
  const base = sizeOf(unit, entry.weightKg, entry.surfaceConstant);
  const micrograms = volumeMl * concentration.value * microgramsIn(concentration.unit);
  const value = micrograms / base.size / microgramsIn(unit);
  const dose = writeAmount(value, unit);
  return {
    value,
    dose,
    steps: [
      ...base.steps,
      `${writeAmount(volumeMl, 'mL')} × ${concentrationInWords(concentration)} = ${mass(micrograms)}`,
      `${mass(micrograms)} ÷ ${writeAmount(base.size, base.unit)} = ${dose}`,
    ],
  };
}

function sizeOf(unit: DoseUnit, weightKg: number, k: SurfaceConstant | undefined): { size: number; unit: string; steps: string[] } {
  checkWeight(weightKg);
  if (unit.endsWith('/kg')) return { size: weightKg, unit: 'kg', steps: [] };
  if (k === undefined) throw new ScienceError('SURFACE_CONSTANT', 'A dose per m² needs the constant the body surface is taken with: 10 or 10.1.');
  const size = bodySurface(weightKg, k);
  return { size, unit: 'm²', steps: [`Body surface, K = ${writeNumber(k)}: ${writeNumber(k)} × (${writeAmount(weightKg * 1000, 'g')})^(2/3) ÷ 10000 = ${writeAmount(size, 'm²')}`] };
}

/** Twelve digits first, or 32.499999999999996 steps would round down where paper rounds up. */
function roundToStep(ml: number, step: number): number {
  const steps = Math.round(Number((ml / step).toPrecision(12)));
  return Number((steps * step).toFixed(2));
}

function mass(micrograms: number): string {
  return micrograms < 1000 ? writeAmount(micrograms, 'µg') : writeAmount(micrograms / 1000, 'mg');
}

function concentrationInWords({ value, unit }: Concentration): string {
  return writeAmount(value, unit);
}

function change(percent: number): string {
  if (percent === 0) return 'as entered';
  return `${writeNumber(Math.abs(percent))}% ${percent > 0 ? 'more' : 'less'} than entered`;
}
