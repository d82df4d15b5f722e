import type { Picture } from '#libs/science/measurement/picture-scale';

type Stored = { width: number; height: number; rowMm: number | null; columnMm: number | null };

/** A stored image as something to measure on: its pixels, and how large they are as the file says, or else as was said for the detector. */
export function pictureOf({ width, height, rowMm, columnMm }: Stored, said: { pixelMm: number } | null): Picture {
  if (rowMm !== null && columnMm !== null) return { width, height, spacing: { row: rowMm, column: columnMm } };
  return { width, height, ...(said && { spacing: { row: said.pixelMm, column: said.pixelMm } }) };
}
