/** Transfer syntaxes by their numbers in DICOM PS3.6 annex A. */
const UNCOMPRESSED = new Map([
  ['1.2.840.10008.1.2', { bigEndian: false }],
  ['1.2.840.10008.1.2.1', { bigEndian: false }],
  ['1.2.840.10008.1.2.1.99', { bigEndian: false }],
  ['1.2.840.10008.1.2.2', { bigEndian: true }],
]);

const [JPEG, JPEG_2000, OTHER] = [[0xff, 0xd8], [0xff, 0x4f], undefined];
/** How the code stream of a compressed frame begins; the JPEG kinds all end with FF D9. */
const COMPRESSED = new Map([
  ['1.2.840.10008.1.2.4.50', JPEG],
  ['1.2.840.10008.1.2.4.51', JPEG],
  ['1.2.840.10008.1.2.4.57', JPEG],
  ['1.2.840.10008.1.2.4.70', JPEG],
  ['1.2.840.10008.1.2.4.80', JPEG],
  ['1.2.840.10008.1.2.4.81', JPEG],
  ['1.2.840.10008.1.2.4.90', JPEG_2000],
  ['1.2.840.10008.1.2.4.91', JPEG_2000],
  ['1.2.840.10008.1.2.4.201', JPEG_2000],
  ['1.2.840.10008.1.2.4.202', JPEG_2000],
  ['1.2.840.10008.1.2.4.203', JPEG_2000],
  ['1.2.840.10008.1.2.5', OTHER],
]);

export type DicomSyntax = { compressed: false; bigEndian: boolean } | { compressed: true; begins: readonly number[] | undefined };

export function dicomSyntax(uid: string): DicomSyntax | undefined {
  const plain = UNCOMPRESSED.get(uid);
  if (plain) return { compressed: false, ...plain };
  return COMPRESSED.has(uid) ? { compressed: true, begins: COMPRESSED.get(uid) } : undefined;
}
