import { isAfter, compareFacts } from './effective.js';
import type { FactOf } from './facts.js';
import type { VisitPicture } from './visit-picture.js';

type Scan = FactOf<'identityScanned'>;

export interface Identity {
  scanned: boolean;
  scannedAtTable: boolean;
  /** The last scan read another number, none, or a stranger's beside ours. */
  mismatched: boolean;
  seenElsewhere: boolean;
}

export function identityOf(visit: VisitPicture, numbers: string[]): Identity {
  const { facts } = visit;
  const scans = facts.all('identityScanned');
  const last = scans.at(-1);
  const settled = facts.last('identitySettled');
  const sedation = facts.first('sedationStarted');
  const matches = (scan: Scan): boolean =>
    scan.numbers.length > 0 && scan.numbers.every((number) => numbers.includes(number));
  const proofs = [...scans.filter(matches), ...facts.all('identitySettled')].sort(compareFacts);
  const elsewhere = facts.last('ourDogSeenElsewhere');
  return {
    scanned: scans.length > 0 || settled !== undefined,
    scannedAtTable: scans.some((scan) => scan.place === 'table') || (settled !== undefined && isAfter(settled, sedation)),
    mismatched: last !== undefined && !matches(last) && !isAfter(settled, last),
    seenElsewhere: elsewhere !== undefined && !isAfter(proofs.at(-1), elsewhere),
  };
}
