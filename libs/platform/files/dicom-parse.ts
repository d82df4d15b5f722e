import { inflateRawSync } from 'node:zlib';
import dicomParser, { type DataSet } from 'dicom-parser';
import { ImageRefused } from './image-refused.js';

const MAX_INFLATED = 512 * 1024 * 1024;

export function parseDicom(content: Buffer): DataSet {
  try {
    return dicomParser.parseDicom(content, {
      inflater: (bytes: Uint8Array, position: number) =>
        Buffer.concat([bytes.subarray(0, position), inflateRawSync(bytes.subarray(position), { maxOutputLength: MAX_INFLATED })]),
    });
  } catch (error) {
    throw new ImageRefused('IMAGE_TRUNCATED', 'The DICOM file is damaged or was cut short on the way. Export the film again and send the new file.', { cause: asError(error) });
  }
}

/** The library throws strings and plain objects too. */
const asError = (error: unknown) => (error instanceof Error ? error : new Error(typeof error === 'string' ? error : JSON.stringify(error)));
