import { z } from 'zod';
import { mark } from '../actions/visit.js';

/** The newest points of a film with who set them and when; null where nobody has. */
export const savedMarks = z.object({ saved: z.object({ marks: z.array(mark), by: z.string(), at: z.string() }).nullable() });
export type SavedMarks = z.infer<typeof savedMarks>;
