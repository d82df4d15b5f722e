/**
 * IEC 62494-1: ten times the decimal logarithm of the exposure index over its target; +1 is 26 % more, −3 is half.
 * What counts as the exposed region is each maker's own, so two machines' values are not compared. Undefined without a target.
 */
export function deviationIndex(index: number | undefined, target: number | undefined): number | undefined {
  return index !== undefined && target !== undefined && index > 0 && target > 0 ? 10 * Math.log10(index / target) : undefined;
}

/** Whether the number that the machine sent and the one that follows from its indices are the same to within its rounding. */
export function deviationFits(sent: number, index: number | undefined, target: number | undefined): boolean {
  const computed = deviationIndex(index, target);
  return computed === undefined || Math.abs(sent - computed) <= 0.5;
}
