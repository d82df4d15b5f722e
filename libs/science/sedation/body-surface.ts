import { ScienceError } from '../error.js';
import { checkWeight } from './entries.js';

/**
 * The constant in K·g^(2/3)·10⁻⁴ m². Textbooks print 10.1 as the formula and tables that fit 10.0,
 * so whoever doses by surface says which one the plan was made with.
 */
export const surfaceConstants = [10.0, 10.1] as const;
export type SurfaceConstant = (typeof surfaceConstants)[number];

/**
 * Body surface of a dog.
 * @param weightKg 0.2 to 150
 * @returns m²
 * @throws ScienceError WEIGHT, SURFACE_CONSTANT
 */
export function bodySurface(weightKg: number, k: SurfaceConstant): number {
  checkWeight(weightKg);
  if (!surfaceConstants.includes(k)) throw new ScienceError('SURFACE_CONSTANT', 'Say which constant the body surface is taken with: 10 or 10.1.');
  return (k * (weightKg * 1000) ** (2 / 3)) / 10_000;
}
