import { buffer } from 'node:stream/consumers';
import { checkImage } from '#libs/dicom/check-image';
import { makePreview } from '#libs/dicom/preview';
import type { FileStore } from '#libs/platform/files/file-store';
import type { StepDeps } from '../record/step-deps.js';

const MAX_PREVIEW_BYTES = 16 * 1024 * 1024;

/** The small picture of an image that came from a machine, which was told at once that the image is safe. One that cannot be shown stays without. */
export async function drawPreview({ db, files }: StepDeps & { files: FileStore }, image: string): Promise<void> {
  const content = await buffer(await files.read(image));
  const preview = await makePreview(content, await checkImage(content));
  if (!preview.made) return;
  const { sha256 } = await files.put([preview.content] as never, { maxBytes: MAX_PREVIEW_BYTES });
  await db.system('keep a preview', async (tx) => {
    await tx.image.updateMany({ where: { sha256: image, previewSha: null }, data: { previewSha: sha256 } });
    await tx.receivedImage.updateMany({ where: { sha256: image, previewSha: null }, data: { previewSha: sha256 } });
  });
}
