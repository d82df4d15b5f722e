import type { DrugLine } from '#libs/contracts/actions/visit';
import { ScienceError } from '#libs/science/error';
import { doseFromVolume, volumeFor } from '#libs/science/sedation/arithmetic';
import { writeAmount } from '#libs/science/sedation/units';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';

export interface PlanLine {
  words: string;
  steps: string[];
  volume: string;
  back: string;
}

/** The arithmetic for what the vet entered, shown in both directions. It proposes nothing and judges nothing. */
export function planLines(weightKg: number, drugs: DrugLine[]): PlanLine[] {
  return drugs.map((line, i) => {
    try {
      const surface = line.surfaceConstant ? { surfaceConstant: line.surfaceConstant } : {};
      const concentration = { value: line.concentration, unit: line.concentrationUnit };
      const there = volumeFor({ dose: { value: line.dose, unit: line.doseUnit }, weightKg, concentration, syringeStepMl: line.resolutionMl, ...surface });
      const back = doseFromVolume({ volumeMl: there.volumeMl, weightKg, concentration, unit: line.doseUnit, ...surface });
      return { words: `${line.drug}, ${line.route}: ${there.volume}`, steps: there.steps, volume: there.volume, back: writeAmount(Number(back.value.toPrecision(4)), line.doseUnit) };
    } catch (error) {
      if (error instanceof ScienceError) throw badInput(`drugs.${i}`, t.said(error.said));
      throw error;
    }
  });
}
