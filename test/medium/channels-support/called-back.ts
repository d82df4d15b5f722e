import { readDataSet } from '#libs/dicom/read-data-set';
import type { Taken } from './centre.js';

/** What an archive was told by a rejection note (DICOM PS3.3, key object selection document). */
export interface HeardNote { code: string; words: string | undefined; poor: string | undefined; films: string[] }

/** The notes among what an archive took, in words; `undefined` for a film. */
export function noteIn({ content }: Taken): HeardNote | undefined {
  const data = readDataSet(content);
  if (data.string('x00080060') !== 'KO') return undefined;
  const coded = (set: typeof data, tag: string) => set.elements[tag]?.items?.[0]?.dataSet?.string('x00080100');
  const parts = data.elements.x0040a730!.items!.map((item) => item.dataSet!);
  const of = (value: string) => parts.find((item) => coded(item, 'x0040a043') === value);
  return {
    code: coded(data, 'x0040a043')!,
    words: of('113012')?.string('x0040a160'),
    poor: of('113011') && coded(of('113011')!, 'x0040a168'),
    films: parts.filter((item) => item.string('x0040a040') === 'IMAGE').map((item) => item.elements.x00081199!.items![0]!.dataSet!.string('x00081155')!),
  };
}
