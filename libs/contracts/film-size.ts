import { z } from 'zod';
import { id } from './common.js';

/** Where the right and the lower edge of a picture point to in the dog. */
const edges = ['left', 'right', 'head', 'tail', 'outside', 'midline', 'toes', 'body'] as const;
export type Edge = (typeof edges)[number];

/** How a picture of a view may lie, the usual way first: right edge, lower edge. On its side it is turned before it is exported. */
export function layingsOf(view: string): (readonly [right: Edge, lower: Edge])[] {
  const [right, other, lower, upper] = LAYINGS[view.slice(0, 2)] ?? [];
  return right && other && lower && upper ? [[right, lower], [other, lower], [other, upper], [right, upper]] : [];
}

/** By what the code of a view begins with, which is the way of the beam. */
const LAYINGS: Record<string, [Edge, Edge, Edge, Edge]> = { vd: ['left', 'right', 'tail', 'head'], ml: ['tail', 'head', 'toes', 'body'], cc: ['outside', 'midline', 'toes', 'body'] };

/** Said by whoever knows how a PNG or JPEG was made: pixel for pixel of this detector, and which way it lies. */
export const statedSize = z.object({ detector: id, right: z.enum(edges, 'Say which way the picture lies.'), lower: z.enum(edges, 'Say which way the picture lies.') });

/** Limits: common practice, no source. With none an entry is taken back. */
export const detectorSize = z.object({
  pixelMm: z
    .number()
    .min(0.02, 'A detector’s pixels are at least 0.02 mm. Their size stands in its manual or on its label; else ask the service engineer.')
    .max(0.5, 'A detector’s pixels are at most 0.5 mm; 139 µm is written 0.139. Their size stands in its manual or on its label; else ask the service engineer.')
    .nullable(),
});
