import dcmjs from 'dcmjs';

/** Kinds that depend on other elements: what may be said of them, and what they are in a radiograph where nothing is. */
const EITHER: Record<string, [string, ...string[]]> = { ox: ['OW', 'OB'], xs: ['US', 'SS'], lt: ['OW', 'US'] };

/** The kind of an element's value by its tag (DICOM PS3.6), UN of what nobody knows; `said` is what the file says. `tag` as in `x00100010`. */
export function vrOf(tag: string, said?: string): string {
  const vr = dcmjs.data.DicomMetaDictionary.dictionary[`(${tag.slice(1, 5)},${tag.slice(5)})`.toUpperCase()]?.vr ?? 'UN';
  const either = EITHER[vr];
  return either ? (either.find((kind) => kind === said) ?? either[0]) : vr;
}
