import { buffer } from 'node:stream/consumers';
import type { Uploaded } from '#libs/contracts/screens/order';
import { audit } from '#libs/platform/audit/audit';
import type { FileStore } from '#libs/platform/files/file-store';
import { checkImage, type CheckedImage } from '#libs/dicom/check-image';
import { deviationFits } from '#libs/dicom/deviation-index';
import { keptWords, type KeptWords } from '#libs/dicom/said-of-film';
import { makePreview } from '#libs/dicom/preview';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';

export const MAX_IMAGE_BYTES = 200 * 1024 * 1024;

/**
 * Takes a picture into the file store and looks at what it really is. No fact is written: that is takeView's,
 * which names the view. A picture that is refused leaves no row behind.
 */
export async function storeImage(deps: StepDeps & { files: FileStore }, actor: Actor, order: string, upload: { source: AsyncIterable<Uint8Array>; fileName: string }): Promise<Uploaded> {
  await deps.db.practice(actor.practice, async (tx) => {
    if (!(await tx.order.findUnique({ where: { id: order }, select: { id: true } }))) throw notFound();
  });
  const { sha256, size } = await deps.files.put(upload.source, { maxBytes: MAX_IMAGE_BYTES });
  const content = await buffer(await deps.files.read(sha256));
  const checked = await checkImage(content, upload.fileName);
  const preview = await makePreview(content, checked);
  const previewSha = preview.made ? (await deps.files.put([preview.content] as never, { maxBytes: MAX_IMAGE_BYTES })).sha256 : null;
  const { imageDay, patientId, rowMm, columnMm, said } = saidByImage(checked);
  await deps.db.practice(actor.practice, async (tx) => {
    await tx.$executeRaw`INSERT INTO image (order_id, sha256, preview_sha, kind, size, width, height, image_day, patient_id, row_mm, column_mm, said, by)
      VALUES (${order}::uuid, ${sha256}, ${previewSha}, ${checked.kind}, ${size}, ${checked.width}, ${checked.height}, ${imageDay ? new Date(`${imageDay}T00:00:00Z`) : null}, ${patientId}, ${rowMm}, ${columnMm}, ${JSON.stringify(said)}::jsonb, ${actor.id})
      ON CONFLICT (order_id, sha256) DO NOTHING`;
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'storeImage', practice: actor.practice, order, subject: sha256 });
  });
  return { image: sha256, kind: checked.kind, width: checked.width, height: checked.height, size, imageDay, patientId, warnings: [...(preview.made ? [] : [preview.sentence]), ...doubts(checked)], previewable: preview.made };
}

/** The machine's own numbers that do not go together are told to whoever judges the film. */
function doubts(image: CheckedImage): string[] {
  if (image.kind !== 'dicom' || image.deviationIndex === undefined) return [];
  return deviationFits(image.deviationIndex, image.exposureIndex, image.targetExposureIndex) ? [] : ['The deviation index in this file does not follow from its exposure index. Trust neither before the X-ray system was looked at.'];
}

/** What the file itself says of the day, the dog, the size of its pixels, the exposure and which way up it is; a PNG or JPEG says nothing. */
export function saidByImage(image: CheckedImage): { imageDay: string | null; patientId: string | null; rowMm: number | null; columnMm: number | null; said: Partial<KeptWords> } {
  if (image.kind !== 'dicom') return { imageDay: null, patientId: null, rowMm: null, columnMm: null, said: {} };
  const [rowMm, columnMm] = image.spacing?.millimetres ?? [null, null];
  return { imageDay: image.acquisitionDate ?? image.studyDate ?? null, patientId: image.patientId ?? null, rowMm, columnMm, said: keptWords(image) };
}
