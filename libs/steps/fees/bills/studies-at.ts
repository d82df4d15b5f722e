import { localDay } from '#libs/pathway/zones';
import { studyName } from '#libs/register/spoken-names';
import type { StudyRow } from './bill-sql.js';
import type { StudyAt } from './find-study.js';

export type CentreFees = ReadonlyMap<string, { name: string; feeMinor: number }>;

/** A study once for each centre that it was sent to. What came after a sending is the reading of the centre it went to last. */
export function studiesAt(row: StudyRow, centres: CentreFees, zone: string): StudyAt[] {
  const { study, order, accession, dog, protocol } = row;
  const name = studyName({ protocol, version: row.version });
  const at = (centre: string) => ({ study, order, accession, dog, protocol, name, centre, centreName: centres.get(centre)?.name ?? '', feeMinor: centres.get(centre)?.feeMinor ?? 0 });
  const reader = (moment: string) => row.sends.findLast((s) => s.at <= moment)?.centre;
  const sentTo = [...new Set(row.sends.map((s) => s.centre))];
  if (sentTo.length === 0) return [{ ...at(row.asked), sentOn: null, readOn: null, packages: [] }];
  return sentTo.map((centre) => {
    const sends = row.sends.filter((s) => s.centre === centre);
    const read = row.read.find((moment) => reader(moment) === centre);
    return { ...at(centre), sentOn: localDay(sends[0]!.at, zone), readOn: read ? localDay(read, zone) : null, packages: [...new Set(sends.map((s) => s.number))] };
  });
}
