import type { CheckedDicom } from '#libs/dicom/check-dicom';
import { keptWords, type KeptWords } from '#libs/dicom/said-of-film';
import { audit } from '#libs/platform/audit/audit';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { Tx } from '#libs/platform/database/db';
import { saidByImage } from '../imaging/store-image.js';
import type { StepDeps } from '../record/step-deps.js';
import { consoleActor, type Sender } from './find-console.js';
import { matchOrder } from './match-order.js';
import { nameArrived } from './name-arrived.js';

export interface Came {
  sha256: string;
  size: number;
  image: CheckedDicom & { sopInstanceUid: string };
}

export type Received = 'changed' | 'unmatched' | 'waits' | 'named';

/**
 * An image that a machine sent and that lies safely in the file store. It goes to the order that its own numbers name, or to the
 * practice's tray. The same image twice is one; another one under the same number is refused, and the first stays.
 */
export async function receiveImage(deps: StepDeps, sender: Sender, came: Came): Promise<Received> {
  const order = await deps.db.practice(sender.practice, (tx) => note(tx, deps, sender, came));
  if (order === 'changed') return order;
  return order === null ? 'unmatched' : nameArrived(deps, consoleActor(sender), order, came.sha256, came.image);
}

async function note(tx: Tx, deps: StepDeps, sender: Sender, { sha256, size, image }: Came): Promise<string | null | 'changed'> {
  const { practice: practiceId, console: consoleId } = sender;
  const number = { practiceId_sopUid: { practiceId, sopUid: image.sopInstanceUid } };
  const match = await matchOrder(tx, image);
  const orderId = 'order' in match ? match.order : null;
  const { imageDay, patientId, rowMm, columnMm, said } = saidByImage(image);
  const at = deps.clock.now();
  const row = { practiceId, consoleId, sopUid: image.sopInstanceUid, sha256, size, width: image.width, height: image.height, imageDay: imageDay ? new Date(`${imageDay}T00:00:00Z`) : null, patientId, rowMm, columnMm };
  const { count } = await tx.receivedImage.createMany({ data: [{ ...row, said: { ...said, ...saidBeside(image, orderId === null) } as object, at, orderId, why: 'why' in match ? match.why : null }], skipDuplicates: true });
  if (count === 0) {
    const before = await tx.receivedImage.findUniqueOrThrow({ where: number, select: { sha256: true, orderId: true, settledOrder: true } });
    return before.sha256 === sha256 ? (before.orderId ?? before.settledOrder) : 'changed';
  }
  if (orderId) await addToOrder(tx, orderId, { ...row, said, by: consoleId });
  await addToOutbox(tx, 'draw-preview', { image: sha256 }, { dedupe: sha256 });
  await audit(tx, { by: consoleId, role: 'queue', action: 'receiveImage', practice: practiceId, order: orderId, subject: sha256, detail: { from: sender.name, ...('why' in match && { why: match.why }) } });
  return orderId;
}

interface ReceivedRow { sha256: string; size: number; width: number; height: number; imageDay: Date | null; patientId: string | null; rowMm: number | null; columnMm: number | null; said: unknown; previewSha?: string | null; by: string }

/** As if it had been uploaded there; an image that the order has already stays as it is. */
export async function addToOrder(tx: Tx, orderId: string, { sha256, size, width, height, imageDay, patientId, rowMm, columnMm, said, previewSha = null, by }: ReceivedRow): Promise<void> {
  await tx.image.createMany({ data: [{ orderId, kind: 'dicom', sha256, size, width, height, imageDay, patientId, rowMm, columnMm, said: keptWords(said as Partial<KeptWords>) as object, previewSha, by }], skipDuplicates: true });
}

/** A name is kept only as long as somebody has to find out whose image it is. */
function saidBeside(image: CheckedDicom, unmatched: boolean): Record<string, string | string[]> {
  const { patientName, accessionNumber, breed, viewPosition, laterality, procedures } = image;
  const told = { ...(unmatched && { patientName }), accessionNumber, breed, viewPosition, laterality, procedures };
  return Object.fromEntries(Object.entries(told).filter((entry): entry is [string, string | string[]] => entry[1] !== undefined));
}
