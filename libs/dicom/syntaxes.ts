/** Transfer syntaxes by their numbers in DICOM PS3.6 annex A. */
export const EXPLICIT = '1.2.840.10008.1.2.1';
export const IMPLICIT = '1.2.840.10008.1.2';
export const DEFLATED = '1.2.840.10008.1.2.1.99';
export const BIG_ENDIAN = '1.2.840.10008.1.2.2';

const JPEG = '1.2.840.10008.1.2.4.';
const stream = (codec: Codec, begins: readonly number[]) => ({ codec, begins });
const [SOI, SOC] = [[0xff, 0xd8], [0xff, 0x4f]];

/** How a compressed image is turned into numbers; `none` is kept whole and cannot be shown here. */
export type Codec = 'jpeg' | 'jpegLossless' | 'jpegLs' | 'jpeg2000' | 'rle' | 'none';

/** How the code stream of a compressed frame begins; the JPEG kinds all end with FF D9. */
const COMPRESSED = new Map<string, { codec: Codec; begins: readonly number[] | undefined }>([
  [`${JPEG}50`, stream('jpeg', SOI)],
  [`${JPEG}51`, stream('none', SOI)],
  [`${JPEG}57`, stream('jpegLossless', SOI)],
  [`${JPEG}70`, stream('jpegLossless', SOI)],
  [`${JPEG}80`, stream('jpegLs', SOI)],
  [`${JPEG}81`, stream('jpegLs', SOI)],
  [`${JPEG}90`, stream('jpeg2000', SOC)],
  [`${JPEG}91`, stream('jpeg2000', SOC)],
  [`${JPEG}201`, stream('none', SOC)],
  [`${JPEG}202`, stream('none', SOC)],
  [`${JPEG}203`, stream('none', SOC)],
  ['1.2.840.10008.1.2.5', { codec: 'rle', begins: undefined }],
]);

export type DicomSyntax = { compressed: false; bigEndian: boolean } | { compressed: true; codec: Codec; begins: readonly number[] | undefined };

export function dicomSyntax(uid: string): DicomSyntax | undefined {
  if ([EXPLICIT, IMPLICIT, DEFLATED, BIG_ENDIAN].includes(uid)) return { compressed: false, bigEndian: uid === BIG_ENDIAN };
  const kind = COMPRESSED.get(uid);
  return kind && { compressed: true, ...kind };
}

/** What is taken over the network: everything that can be shown, lossless before lossy, and the plain kinds last. */
export const TAKEN = [...['70', '57', '80', '90', '81', '91', '50'].map((n) => JPEG + n), '1.2.840.10008.1.2.5', EXPLICIT, IMPLICIT, BIG_ENDIAN];
