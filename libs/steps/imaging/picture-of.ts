import type { Picture } from '#libs/science/measurement/picture-scale';

/** A stored image as something to measure on: its size, and how large the file says its pixels are. */
export function pictureOf({ width, height, rowMm, columnMm }: { width: number; height: number; rowMm: number | null; columnMm: number | null }): Picture {
  return { width, height, ...(rowMm === null || columnMm === null ? {} : { spacing: { row: rowMm, column: columnMm } }) };
}
