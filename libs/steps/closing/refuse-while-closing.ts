import { z } from 'zod';
import { localDay } from '#libs/contracts/common';
import { t } from '#libs/words/spoken';
import { spokenDay } from '../record/day-words.js';
import { StepError } from '../record/step-error.js';

const policy = z.object({ closing: z.object({ lastDay: localDay }).optional() });

/** The last day of a practice that closes; null for one that stays. */
export const lastDayOf = (stored: unknown): string | null => policy.parse(stored ?? {}).closing?.lastDay ?? null;

/** A practice that closes begins nothing that it cannot bring to its end. */
export function refuseWhileClosing(stored: unknown): void {
  const lastDay = lastDayOf(stored);
  if (lastDay) throw new StepError('HELD', t('This practice closes on {lastDay} and opens no new order. Tell the owner which practice takes dogs now.', { lastDay: spokenDay(lastDay) }));
}
