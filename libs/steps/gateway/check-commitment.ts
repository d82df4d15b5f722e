import { NOT_SAFE, type AskedImage, type Asked, type FailedImage } from '#libs/dicom/commitment';
import { DicomScan } from '#libs/dicom/scan';
import type { FileStore } from '#libs/platform/files/file-store';
import type { StepDeps } from '../record/step-deps.js';

type Deps = StepDeps & { files: FileStore };

/** Reads every image that was asked about again, whole: safe is what is still exactly what came. What was found is kept, and found once. */
export async function checkCommitment(deps: Deps, practice: string, commitment: string): Promise<Asked & { failed: FailedImage[] }> {
  const row = await deps.db.practice(practice, (tx) => tx.commitment.findUniqueOrThrow({ where: { id: commitment } }));
  const images = row.asked as unknown as AskedImage[];
  const asked = { transaction: row.transactionUid, images };
  if (row.checkedAt) return { ...asked, failed: row.failed as unknown as FailedImage[] };
  const kept = await deps.db.practice(practice, (tx) => tx.receivedImage.findMany({ where: { practiceId: practice, sopUid: { in: images.map((image) => image.instance) } }, select: { sopUid: true, sha256: true } }));
  const files = new Map(kept.map(({ sopUid, sha256 }) => [sopUid, sha256]));
  const failed: FailedImage[] = [];
  for (const image of images) {
    const reason = await whyNotSafe(deps.files, image, files.get(image.instance));
    if (reason !== undefined) failed.push({ ...image, reason });
  }
  await deps.db.practice(practice, (tx) => tx.commitment.updateMany({ where: { id: commitment, checkedAt: null }, data: { checkedAt: deps.clock.now(), failed: failed.map((image) => ({ ...image })) } }));
  return { ...asked, failed };
}

async function whyNotSafe(files: FileStore, { sopClass }: AskedImage, sha256: string | undefined): Promise<number | undefined> {
  if (sha256 === undefined) return NOT_SAFE.notHere;
  try {
    const scan = new DicomScan();
    for await (const chunk of await files.read(sha256)) scan.push(chunk as Buffer);
    return scan.end().sopClassUid === sopClass ? undefined : NOT_SAFE.anotherKind;
  } catch {
    return NOT_SAFE.broken;
  }
}

export async function noteTold({ db, clock }: StepDeps, practice: string, commitment: string): Promise<void> {
  await db.practice(practice, (tx) => tx.commitment.updateMany({ where: { id: commitment, toldAt: null }, data: { toldAt: clock.now() } }));
}
