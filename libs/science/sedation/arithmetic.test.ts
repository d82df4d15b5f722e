import fc from 'fast-check';
import { doseFromVolume, volumeFor, type VolumeEntry } from './arithmetic.js';
import { bodySurface } from './body-surface.js';
import { doseUnits, parseUnit, syringeSteps, writeAmount, writeNumber } from './units.js';

/** Numbers for arithmetic only; none of them is a dose for a dog. */
const entry = (value: number, unit: VolumeEntry['dose']['unit'], weightKg: number, perMl: number, syringeStepMl: VolumeEntry['syringeStepMl'] = 0.01): VolumeEntry => ({
  dose: { value, unit },
  weightKg,
  concentration: { value: perMl, unit: 'mg/mL' },
  syringeStepMl,
});

describe('volumeFor', () => {
  it.each([
    // mL = µg/kg · kg / 1000 / (mg/mL): recomputed from the definition, no source needed.
    [entry(5, 'µg/kg', 32.5, 0.5), 0.325, '0.33 mL'],
    [entry(10, 'µg/kg', 8, 0.5), 0.16, '0.16 mL'],
    [entry(0.2, 'mg/kg', 30, 10), 0.6, '0.6 mL'],
    [entry(0.2, 'mg/kg', 30, 10, 0.5), 0.6, '0.5 mL'],
    [entry(0.2, 'mg/kg', 31, 10, 0.05), 0.62, '0.6 mL'],
    [entry(0.2, 'mg/kg', 33, 10, 0.1), 0.66, '0.7 mL'],
  ])('%j gives %f mL, drawn as %s', (given, exact, volume) => {
    expect(volumeFor(given).exactMl).toBeCloseTo(exact, 10);
    expect(volumeFor(given).volume).toBe(volume);
  });

  it('shows every step with its units', () => {
    expect(volumeFor(entry(5, 'µg/kg', 32.5, 0.5))).toMatchObject({
      given: '5.077 µg/kg',
      roundingPercent: 1.5,
      steps: ['5 µg/kg × 32.5 kg = 162.5 µg', '162.5 µg ÷ 0.5 mg/mL = 0.325 mL', 'To the syringe’s step of 0.01 mL: 0.33 mL', '0.33 mL gives 5.077 µg/kg (1.5% more than entered)'],
    });
  });

  it('doses by surface with the constant named', () => {
    // 125 µg/m² at 20 kg, K = 10.1: 93.0218 µg, .186044 mL of .5 mg/mL: recomputed from the formula below.
    const answer = volumeFor({ ...entry(125, 'µg/m²', 20, 0.5), surfaceConstant: 10.1 });
    expect(answer.exactMl).toBeCloseTo(0.186044, 6);
    expect(answer.steps[0]).toBe('Body surface, K = 10.1: 10.1 × (20000 g)^(2/3) ÷ 10000 = 0.744174 m²');
    expect(answer.steps[1]).toBe('125 µg/m² × 0.744174 m² = 93.0218 µg');
    expect(() => volumeFor(entry(125, 'µg/m²', 20, 0.5))).toThrow(/needs the constant/);
  });

  it.each([
    [entry(0, 'µg/kg', 20, 0.5), 'DOSE', /above 0/],
    [entry(NaN, 'µg/kg', 20, 0.5), 'DOSE', /above 0/],
    [entry(5, 'µg/kg', -2, 0.5), 'WEIGHT', /today’s weight/],
    [entry(5, 'µg/kg', 325, 0.5), 'WEIGHT', /decimal point/],
    [entry(5, 'µg/kg', 20, Infinity), 'CONCENTRATION', /above 0/],
    [{ ...entry(5, 'µg/kg', 20, 0.5), syringeStepMl: 0.2 as 0.1 }, 'SYRINGE', /smallest step/],
    [entry(5, 'µg/kg', 4, 10, 0.5), 'TOO_SMALL', /0\.002 mL cannot be drawn in steps of 0\.5 mL/],
  ])('refuses %j', (given, code, words) => {
    expect(() => volumeFor(given)).toThrow(expect.objectContaining({ code, message: expect.stringMatching(words) }));
  });

  it('comes back to the dose entered, within half a step of the syringe', () => {
    const number = fc.integer({ min: 1, max: 2000 }).map((n) => n / 100);
    const weightKg = fc.integer({ min: 10, max: 900 }).map((n) => n / 10);
    fc.assert(fc.property(number, fc.constantFrom(...doseUnits), weightKg, number, fc.constantFrom(...syringeSteps), (value, unit, kg, perMl, step) => {
      const asked = { ...entry(value, unit, kg, perMl, step), surfaceConstant: 10.1 as const };
      let answer;
      try {
        answer = volumeFor(asked);
      } catch (error) {
        expect(error).toMatchObject({ code: 'TOO_SMALL' });
        return;
      }
      expect(Math.abs(answer.volumeMl - answer.exactMl)).toBeLessThanOrEqual(step / 2 + 1e-9);
      const back = doseFromVolume({ volumeMl: answer.exactMl, weightKg: kg, concentration: asked.concentration, unit, surfaceConstant: 10.1 });
      expect(back.value).toBeCloseTo(value, 8);
      for (const line of [answer.volume, answer.given, ...answer.steps]) expect(line).not.toMatch(/(^|\s)\.\d|\d\.\d*0(?!\d)|e[-+]\d/);
    }));
  });
});

describe('doseFromVolume', () => {
  it('shows the way back', () => {
    expect(doseFromVolume({ volumeMl: 0.33, weightKg: 32.5, concentration: { value: 0.5, unit: 'mg/mL' }, unit: 'µg/kg' })).toMatchObject({
      dose: '5.07692 µg/kg',
      steps: ['0.33 mL × 0.5 mg/mL = 165 µg', '165 µg ÷ 32.5 kg = 5.07692 µg/kg'],
    });
  });
});

describe('bodySurface', () => {
  it.each([
    // K = 10.1: the formula as a veterinary page states it. K = 10.0: fits the handbooks' tables, which are from memory.
    [5, 0.295326, 0.292402],
    [10, 0.4688, 0.464159],
    [20, 0.744174, 0.736806],
    [30, 0.975144, 0.965489],
    [40, 1.181303, 1.169607],
  ])('%i kg: %f m² with 10.1, %f m² with 10', (kg, with101, with100) => {
    expect(bodySurface(kg, 10.1)).toBeCloseTo(with101, 6);
    expect(bodySurface(kg, 10.0)).toBeCloseTo(with100, 6);
  });
});

describe('numbers beside drugs', () => {
  it('have a leading zero, no trailing one, and a unit', () => {
    expect([0.3, 0.3000001, 10, 100, 2.5, 0.00002, 1234567, 0.1 + 0.2].map(writeNumber)).toEqual(['0.3', '0.3', '10', '100', '2.5', '0.00002', '1234570', '0.3']);
    expect(writeAmount(0.3, 'mL')).toBe('0.3 mL');
  });

  it('know the ways to write micro', () => {
    expect(['ug/kg', 'mcg / kg', '\u03bcg/kg', '\u00b5g/kg'].map((text) => parseUnit(text, doseUnits))).toEqual(Array(4).fill('µg/kg'));
    expect(parseUnit('mg/m2', doseUnits)).toBe('mg/m²');
    expect(() => parseUnit('g/kg', doseUnits)).toThrow(/Use mg\/kg/);
  });
});
