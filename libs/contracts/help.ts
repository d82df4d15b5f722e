import { z } from 'zod';

/** A study as it is explained to the people who work with it, each statement with where it comes from. */
export const explainedStudy = z.object({
  code: z.string(), version: z.string(), name: z.string(), deskName: z.string(), changes: z.string(),
  views: z.array(z.object({ label: z.string(), required: z.boolean(), checklist: z.array(z.string()) })),
  youngest: z.string(),
  measure: z.object({ name: z.string(), says: z.string() }),
  dog: z.string(),
  /** How far two readings of one dog differ, or why nobody can say. */
  doubt: z.string(),
  counts: z.string(),
  noValue: z.array(z.string()),
  sources: z.array(z.object({ what: z.string(), citation: z.string() })),
});
export type ExplainedStudy = z.infer<typeof explainedStudy>;
