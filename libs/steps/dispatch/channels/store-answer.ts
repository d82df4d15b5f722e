import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';

interface Element { vr: string; Value?: unknown[] }
type DataSet = Record<string, Element>;

/** What a centre says of an object that it was handed: DICOM PS3.18, store instances response. */
export type StoreAnswer = { stored: true } | { stored: false; reason: number | undefined } | undefined;

/** Of one object, from the answer's JSON; undefined where the answer does not name it. */
export function storeAnswer(json: unknown, sopUid: string): StoreAnswer {
  const failed = items(json, '00081198').find((item) => first(item, '00081155') === sopUid);
  if (failed) return { stored: false, reason: Number(first(failed, '00081197')) || undefined };
  return items(json, '00081199').some((item) => first(item, '00081155') === sopUid) ? { stored: true } : undefined;
}

const first = (data: DataSet, tag: string): unknown => data[tag]?.Value?.[0];
const items = (json: unknown, tag: string): DataSet[] => {
  const data = (Array.isArray(json) ? json[0] : json) as DataSet | null | undefined;
  const value = data?.[tag]?.Value;
  return Array.isArray(value) ? (value as DataSet[]) : [];
};

/** The centre has no room now and may have some later. */
export const isPassing = (reason: number | undefined): boolean => reason !== undefined && ((reason & 0xff00) === 0xa700 || reason === 0x0213);

// DICOM PS3.18 table "Store Instances Response failure reason values", and the status codes of PS3.4 and PS3.7 that it points to
const REASONS: [code: number, mask: number, why: Tellable][] = [
  [0x0110, 0xffff, said('its archive failed at it')],
  [0x0111, 0xffff, said('it has another one of the same number')],
  [0x0117, 0xffff, said('it takes the file for no valid image')],
  [0x0122, 0xffff, said('it takes no images of this kind')],
  [0x0124, 0xffff, said('we may not store there')],
  [0xa900, 0xff00, said('the file does not fit the kind of image that it says it is')],
  [0xc000, 0xf000, said('it cannot read the file')],
];

export function reasonWords(reason: number | undefined): Tellable {
  if (reason === undefined) return said('it gives no reason');
  const code = `${reason.toString(16).toUpperCase().padStart(4, '0')}H`;
  const known = REASONS.find(([value, mask]) => (reason & mask) === value);
  return known ? said('{why} (code {code})', { why: known[2], code }) : said('it gives code {code} as its reason', { code });
}
