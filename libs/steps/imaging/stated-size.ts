import type { z } from 'zod';
import { layingsOf, type statedSize } from '#libs/contracts/film-size';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import type { Stated, Work } from '../record/work.js';

/** The size that holds for a film: what was said of it last. */
export const sizeOfFilm = ({ facts }: Pick<Work, 'facts'>, exposure: string) => facts('filmSized').findLast((f) => f.exposure === exposure)?.size ?? null;

/** The size that is entered for the detector now, taken over for one picture; a detector that is replaced later changes nothing of it. */
export async function sizedBy({ tx, actor }: Work, film: { exposure: string; view: string; kind: string }, said: z.output<typeof statedSize>): Promise<Stated> {
  if (film.kind === 'dicom') throw badInput('size', t('A DICOM file says itself how large its pixels are. Leave the size out.'));
  if (!layingsOf(film.view).some(([right, lower]) => right === said.right && lower === said.lower)) throw badInput('size.right', t('A picture of this view does not lie like that. Choose one of the ways offered, or leave the size out.'));
  const [detector] = await tx.$queryRaw<{ name: string; pixelMm: number | null }[]>`
    SELECT e.name, s.pixel_mm AS "pixelMm" FROM equipment e JOIN detector_size s ON s.equipment_id = e.id
    WHERE e.id = ${said.detector}::uuid AND e.practice_id = ${actor.practice}::uuid ORDER BY s.seq DESC LIMIT 1`;
  if (!detector?.pixelMm) throw badInput('size.detector', t('Nobody has entered how large the pixels of this detector are. A practice manager does so under Practice, Equipment; until then leave the size out.'));
  const { pixelMm, name } = { ...detector, pixelMm: detector.pixelMm };
  return { type: 'filmSized', exposure: film.exposure, size: { pixelMm, right: said.right, lower: said.lower }, detail: { detector: name, detectorId: said.detector } };
}
