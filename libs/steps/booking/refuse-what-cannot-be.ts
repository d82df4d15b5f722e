import { randomUUID } from 'node:crypto';
import { proposes } from '#libs/pathway/dry-run';
import type { Fact } from '#libs/pathway/facts';
import { holdSentence } from '#libs/pathway/words';
import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';
import type { Stated, Work } from '../record/work.js';

/** The dry run: what would make this day, place or dog unfit refuses the proposal before anything is stored. */
export function refuseWhatCannotBe(work: Work, stated: Stated[]): void {
  const now = work.now.toISOString();
  const proposed = stated.map((s) => ({ ...s, id: randomUUID(), at: now, rec: now, by: work.actor.id, role: 'desk', practice: work.actor.practice }) as Fact);
  const holds = proposes(work.order.facts, proposed, now, work.order.rules);
  if (holds.length === 0) return;
  const because = holds.map((h) => ({ code: h.code, words: holdSentence(h, { t }), ...(h.until ? { earliestDate: h.until } : {}) }));
  throw new StepError('NOT_ELIGIBLE', because.map((b) => b.words).join(' '), { because });
}
