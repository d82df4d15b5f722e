import { z } from 'zod';
import { localDay, page } from './common.js';

/** The studies behind a number of the scheme's page. */
export const schemeStudiesAsked = z.object({
  protocol: z.string().max(40).optional(),
  step: z.string().max(40).optional(),
  show: z.enum(['step', 'unsent']).default('step'),
  page,
});
export type SchemeStudiesAsked = z.output<typeof schemeStudiesAsked>;

/** No owner and no dog's name: whoever needs them asks the practice by the order's number. */
export const schemeStudies = z.object({
  title: z.string(),
  more: z.boolean(),
  rows: z.array(z.object({ accession: z.string(), study: z.string(), step: z.string(), practice: z.string(), centre: z.string(), since: localDay.nullable(), dueDay: localDay.nullable() })),
});
export type SchemeStudies = z.infer<typeof schemeStudies>;
