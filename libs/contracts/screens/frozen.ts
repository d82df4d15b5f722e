import { z } from 'zod';
import { localDay } from '../common.js';

/** The head of a record of a death or a harm. */
export const frozenView = z.object({
  death: z.object({ day: localDay, at: z.string(), inCare: z.boolean(), cause: z.string() }).nullable(),
  harm: z.object({ at: z.string(), what: z.string() }).nullable(),
  /** Speaks with the family, answers for the record and may take it out with its history. */
  caseOwner: z.object({ id: z.string(), name: z.string() }).nullable(),
  legalHold: z.boolean(),
  /** What happened before the record was frozen and was written down after it. */
  late: z.array(z.object({ at: z.string(), rec: z.string(), by: z.string(), what: z.string() })),
  readings: z.int(),
  batches: z.int(),
});
export type FrozenView = z.infer<typeof frozenView>;
