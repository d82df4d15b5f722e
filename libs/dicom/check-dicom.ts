import { inflated } from './read-data-set.js';
import type { Says } from './says.js';
import { DicomScan } from './scan.js';

export interface CheckedDicom extends Says {
  kind: 'dicom';
  width: number;
  height: number;
  /** Bits in use of one sample. */
  bits: number;
  channels: number;
  frames: number;
  transferSyntax: string;
  compressed: boolean;
}

export function checkDicom(content: Buffer): CheckedDicom {
  const scan = new DicomScan();
  scan.push(inflated(content));
  return scan.end();
}
