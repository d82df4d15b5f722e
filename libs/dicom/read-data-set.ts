import { inflateRawSync } from 'node:zlib';
import dicomParser, { type DataSet } from 'dicom-parser';
import { ImageRefused } from './image-refused.js';
import { DEFLATED } from './syntaxes.js';

/** Somewhat more than the largest image that is taken. */
const MAX_INFLATED = 160 * 1024 * 1024;
export const PIXELS = 'x7fe00010';

/** All elements of a whole file that was inflated before, if it had to be. */
export function readDataSet(content: Buffer): DataSet {
  return orDamaged(() => dicomParser.parseDicom(content, { inflater: () => content }));
}

/** The elements up to the pixels; throws while the bytes that are there end inside one of them. */
export const readHead = (head: Buffer): DataSet => dicomParser.parseDicom(head, { untilTag: PIXELS, inflater: () => head });

/** A deflated file as if it had been stored without, and any other one as it is. */
export function inflated(content: Buffer): Buffer {
  return orDamaged(() => {
    const { elements, position } = metaOf(content);
    const syntax = elements.x00020010;
    if (!syntax || text(content, syntax.dataOffset, syntax.length) !== DEFLATED) return content;
    return Buffer.concat([content.subarray(0, position), inflateRawSync(content.subarray(position), { maxOutputLength: MAX_INFLATED })]);
  });
}

/** Group 2 alone, which is always explicit and little-endian. */
function metaOf(content: Buffer): { elements: DataSet['elements']; position: number } {
  const data = dicomParser.readPart10Header(content, { untilTag: PIXELS });
  return { elements: data.elements, position: (data as DataSet & { position: number }).position };
}

const text = (content: Buffer, at: number, length: number): string => content.toString('latin1', at, at + length).replace(/[\0 ]+$/, '');

/** The parser reads damaged values past their ends. */
export function orDamaged<T>(read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof ImageRefused) throw error;
    throw new ImageRefused('IMAGE_TRUNCATED', 'The DICOM file is damaged or was cut short on the way. Export the film again and send the new file.', { cause: asError(error) });
  }
}

/** The library throws strings too, and plain objects that hold the whole file. */
const asError = (error: unknown) => (error instanceof Error ? error : new Error(String((error as { exception?: unknown }).exception ?? error)));
