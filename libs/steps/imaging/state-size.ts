import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { filmOf } from './film-of.js';
import { sizedBy } from './stated-size.js';

/** Said afterwards, or taken back, of a film that is not sealed yet: what a centre has been sent stays as it was. */
export const stateSize = useCase('stateSize', async (work, on, { exposure, size }) => {
  const film = filmOf(work, exposure);
  if (film.visit !== on) throw badInput('exposure', t('This visit has no such film. Choose one that was taken in it.'));
  if (work.facts('packageSealed').some((f) => f.exposures.includes(exposure))) throw badInput('exposure', t('This film is sealed and stays as it is.'));
  if (!size) return [{ type: 'filmSized', exposure, size: null }];
  const { kind } = await work.tx.image.findUniqueOrThrow({ where: { orderId_sha256: { orderId: work.order.id, sha256: film.image } }, select: { kind: true } });
  return [await sizedBy(work, { exposure, view: film.view, kind }, size)];
});
