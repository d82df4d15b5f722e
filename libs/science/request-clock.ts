import type { LocalDay } from './local-day.js';
import { parseDay } from './local-day.js';

/**
 * A month to answer, and two more where it is said why: the clock that many data-protection laws have
 * (common practice; the law where the practice is decides). A month that has no such day ends on its last.
 */
export const answerBy = (received: LocalDay): LocalDay => parseDay(received).add({ months: 1 }).toString();
export const answerAtLatest = (received: LocalDay): LocalDay => parseDay(received).add({ months: 3 }).toString();
