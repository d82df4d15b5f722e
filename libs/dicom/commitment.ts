import { isUid } from './uids.js';

/** DICOM PS3.4 annex J: a machine asks whether images are safe here, and forgets those of which it hears that they are. */
export const COMMITMENT = { sopClass: '1.2.840.10008.1.20.1', instance: '1.2.840.10008.1.20.1.1', request: 1 } as const;

/** Why an image is not safe here (PS3.3 section C.14.1.1). */
export const NOT_SAFE = { broken: 0x0110, notHere: 0x0112, anotherKind: 0x0119 } as const;

export interface AskedImage { sopClass: string; instance: string }
export interface FailedImage extends AskedImage { reason: number }
export interface Asked { transaction: string; images: AskedImage[] }

type Elements = Record<string, unknown>;

/** What was asked, by keywords; undefined where it is no such question. */
export function readCommitmentRequest(elements: Elements): Asked | undefined {
  const transaction = uidIn(elements.TransactionUID);
  const images = [elements.ReferencedSOPSequence ?? []].flat().map((item) => ({ sopClass: uidIn((item as Elements).ReferencedSOPClassUID), instance: uidIn((item as Elements).ReferencedSOPInstanceUID) }));
  const whole = images.filter((image): image is AskedImage => image.sopClass !== undefined && image.instance !== undefined);
  return transaction && images.length > 0 && whole.length === images.length ? { transaction, images: whole } : undefined;
}

/** The answer: event 1 when all are safe, else 2. */
export function commitmentReport({ transaction, images }: Asked, failed: FailedImage[]): { event: 1 | 2; elements: Elements } {
  const lost = new Set(failed.map((image) => image.instance));
  const safe = images.filter((image) => !lost.has(image.instance));
  return {
    event: failed.length === 0 ? 1 : 2,
    elements: {
      TransactionUID: transaction,
      ...(safe.length > 0 && { ReferencedSOPSequence: safe.map(reference) }),
      ...(failed.length > 0 && { FailedSOPSequence: failed.map((image) => ({ ...reference(image), FailureReason: image.reason })) }),
    },
  };
}

const reference = ({ sopClass, instance }: AskedImage): Elements => ({ ReferencedSOPClassUID: sopClass, ReferencedSOPInstanceUID: instance });

function uidIn(value: unknown): string | undefined {
  const text = typeof value === 'string' ? value.trim() : undefined;
  return isUid(text) ? text : undefined;
}
