import type { DataSet } from 'dicom-parser';
import type { Decoder } from './charsets.js';

/** One value as words; undefined where it is missing or empty. */
export function textIn(data: DataSet, tag: string, decoder: Decoder): string | undefined {
  const element = data.elements[tag];
  if (!element || element.length === 0) return undefined;
  const bytes = data.byteArray.subarray(element.dataOffset, element.dataOffset + element.length);
  return decoder.decode(bytes).replace(/\0/g, '').trim() || undefined;
}

/** The values at the end of a path through sequences, of every item. */
export function textsIn(data: DataSet, [tag, ...rest]: string[], decoder: Decoder): string[] {
  if (rest.length === 0) return [textIn(data, tag!, decoder) ?? []].flat();
  return (data.elements[tag!]?.items ?? []).flatMap((item) => (item.dataSet ? textsIn(item.dataSet, rest, decoder) : []));
}

export function numberIn(data: DataSet, tag: string, index = 0): number | undefined {
  const value = data.floatString(tag, index);
  return value !== undefined && Number.isFinite(value) ? value : undefined;
}

/** YYYY-MM-DD of a day that exists. */
export function dayOf(value: string | undefined): string | undefined {
  const parts = /^(\d{4})(\d{2})(\d{2})$/.exec(value ?? '');
  if (!parts) return undefined;
  const written = `${parts[1]}-${parts[2]}-${parts[3]}`;
  const date = new Date(`${written}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(written) ? written : undefined;
}
