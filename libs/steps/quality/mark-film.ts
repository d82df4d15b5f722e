import { randomUUID } from 'node:crypto';
import { ScienceError } from '#libs/science/error';
import { refuseMarks } from '#libs/science/measurement/refuse-marks';
import type { Mark } from '#libs/science/measurement/check-marks';
import { t } from '#libs/words/spoken';
import { filmOf } from '../imaging/film-of.js';
import { pictureOf } from '../imaging/picture-of.js';
import { sizeOfFilm } from '../imaging/stated-size.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** Points set on a film while the dog sleeps: a row of their own beside those before, and a fact that says no more than that. Read back by `saved-marks` alone. */
export const markFilm = useCase('markFilm', async (work, on, input) => {
  const { tx, order, actor, now } = work;
  const taken = filmOf(work, input.exposure);
  if (taken.visit !== on) throw badInput('exposure', t('This visit has no such film. Choose one that was taken in it.'));
  const image = await tx.image.findUnique({ where: { orderId_sha256: { orderId: order.id, sha256: taken.image } } });
  if (!image) throw badInput('exposure', t('The picture of this film is not here, so nothing can be measured on it.'));
  const picture = pictureOf(image, sizeOfFilm(work, input.exposure));
  const marks = input.marks.map(({ kind, side, points }) => ({ kind, points, ...(side ? { side } : {}) })) as Mark[];
  try {
    refuseMarks({ view: taken.view, picture, marks });
  } catch (error) {
    if (error instanceof ScienceError) throw badInput('marks', t.said(error.said));
    throw error;
  }
  const marking = randomUUID();
  await tx.roomMark.create({ data: { id: marking, orderId: order.id, exposure: input.exposure, picture: picture as object, marks: marks as object[], by: actor.id, byName: actor.name, at: now } });
  return [{ type: 'filmMarked', exposure: input.exposure, marking }];
});
