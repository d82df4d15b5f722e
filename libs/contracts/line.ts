import { z } from 'zod';

/** What became of a call to another server: how far it came, and what was said there. */
export const lineAnswers = [
  'taken', 'reached', 'refused', 'noService', 'gone', 'busy', 'unexpected',
  'nameNotFound', 'certificate', 'inside', 'redirect', 'clear', 'noAddress', 'nobodyListens', 'noAnswer', 'broken', 'secretLost',
] as const;
export const lineAnswer = z.enum(lineAnswers);
export type LineAnswer = (typeof lineAnswers)[number];
