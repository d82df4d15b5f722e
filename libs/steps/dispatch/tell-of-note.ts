import { notesNotTaken } from '#libs/pathway/study-notes';
import { pictureOf } from '#libs/pathway/picture';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** The archive did not take a note, or cannot be reached: a person has told the centre in another way, and nothing more is tried. */
export const tellOfNote = useCase('tellOfNote', async (work, on, { note, how, whom }) => {
  const { tx, now, actor, order } = work;
  const study = pictureOf(order.facts, order.rules).studies.find(({ id }) => id === on)!;
  if (!notesNotTaken(study.facts).includes(note)) throw badInput('note', t('The centre knows of these films already. Choose another note.'));
  await tx.$executeRaw`UPDATE delivery SET state = 'ended', touched_at = ${now} WHERE send_id = ${note}::uuid AND order_id = ${order.id}::uuid AND state IN ('open', 'stopped')`;
  await tx.$executeRaw`UPDATE problem SET resolved_at = ${now}, resolved_by = ${actor.name} WHERE order_id = ${order.id}::uuid AND job = 'deliver-package' AND payload->>'send' = ${note} AND resolved_at IS NULL`;
  return [{ type: 'noteTold', study: on, note, how, detail: { whom } }];
});
