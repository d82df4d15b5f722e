import type { SavedMarks } from '#libs/contracts/screens/marks';
import { decide } from '#libs/pathway/decide';
import { audit } from '#libs/platform/audit/audit';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import { readOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';
import { workOn, type Work } from '../record/work.js';

/**
 * The newest points of a film, for those who may set some on it at this moment, so that they go on where they or a
 * colleague were. Nothing else hands them out before the sealing.
 */
export async function savedMarks(deps: StepDeps, actor: Actor, order: string, exposure: string): Promise<SavedMarks> {
  return deps.db.practice(actor.practice, async (tx) => {
    const record = await readOrder(tx, order);
    if (!record) throw notFound();
    const work = workOn(tx, deps.clock.now(), actor, record, deps.publicUrl);
    const film = work.facts('exposureTaken').find((f) => f.exposure === exposure);
    if (!film || work.facts('exposureDisowned').some((f) => f.exposure === exposure)) throw notFound();
    const role = markingRole(work, film.visit);
    const newest = work.facts('filmMarked').findLast((f) => f.exposure === exposure);
    const row = newest && (await tx.roomMark.findUnique({ where: { id: newest.marking } }));
    if (!row) return { saved: null };
    await audit(tx, { by: actor.id, role, action: 'readMarks', practice: actor.practice, order, subject: exposure });
    return { saved: { marks: row.marks as NonNullable<SavedMarks['saved']>['marks'], by: row.byName, at: row.at.toISOString() } };
  });
}

function markingRole({ actor, evaluation }: Work, visit: string): string {
  const answers = actor.roles.map((role) => ({ role, answer: decide(evaluation, 'markFilm', { scope: 'visit', id: visit }, role) }));
  const may = answers.find(({ answer }) => answer.allowed);
  if (may) return may.role;
  const wrongRole = answers.every(({ answer }) => !answer.allowed && answer.because.includes('NOT_YOUR_ROLE'));
  throw wrongRole ? new StepError('NOT_YOUR_ROLE') : new StepError('NOT_AT_THIS_STEP', t('Points are set and seen while the dog sleeps. Until the films are sealed they stay in the room.'));
}
