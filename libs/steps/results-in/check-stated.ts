import { createHash } from 'node:crypto';
import type { Joint } from '#libs/contracts/common';
import { normaliseScan } from '#libs/science/identifiers/normalise-scan';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { checkReading } from '#libs/science/protocols/check-reading';
import { readingKey } from '#libs/science/protocols/same-reading';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import type { StepDeps } from '../record/step-deps.js';
import type { Bringer } from './bringer.js';
import { findPackage, type Found } from './find-package.js';
import type { Stated } from './stated.js';

export interface Meant {
  found: Found;
  protocol: Protocol;
  joints: Joint[];
  /** The same reading has the same id, whichever way and however often it comes. */
  key: string;
  /** Possible, and a person will be asked to look. */
  asks: string[];
}
export type Checked = Meant | { words: string; found?: Found };

export const isMeant = (checked: Checked): checked is Meant => 'key' in checked;

const DAY_MS = 86_400_000;

/** What a reading would be at its order. Nothing is stored. */
export async function checkStated(deps: StepDeps, bringer: Bringer, stated: Stated): Promise<Checked> {
  const found = await findPackage(deps, bringer, stated.reading);
  if ('words' in found) return found;
  const { protocol: code, version } = found.summary.study;
  const protocol = findProtocol(code, version);
  if (!protocol) return { found, words: `The study ${code}, version ${version}, is not installed here. Tell whoever runs the server.` };
  const { joints, problems } = stated.joints(protocol);
  const checks = checkReading(protocol, joints as JointReading[]);
  const wrong = [...problems, ...(problems.length > 0 ? [] : checks.filter((p) => p.weight === 'refuse').map((p) => p.words)), ...notYet(deps, stated)];
  if (wrong.length > 0) return { found, words: wrong.join(' ') };
  return { found, protocol, joints, key: keyOf(found, stated, protocol, joints), asks: [...checks.map((p) => p.words), ...otherDog(found, stated), ...readBeforeImaged(found, stated)] };
}

/** A centre may be a day ahead of the server. */
function notYet({ clock }: StepDeps, { reading: { readOn } }: Stated): string[] {
  const latest = new Date(clock.now().getTime() + DAY_MS).toISOString().slice(0, 10);
  return readOn && readOn > latest ? [`Read on: ${readOn} is still to come. Correct the day.`] : [];
}

const otherDog = ({ summary: { dog } }: Found, { reading: { dogNumber } }: Stated): string[] =>
  dogNumber && normaliseScan(dogNumber) !== normaliseScan(dog.number) ? ['The dog’s number on the reading is not the one that stands on the package. A veterinarian looks at it.'] : [];

const readBeforeImaged = ({ summary: { imagedOn } }: Found, { reading: { readOn } }: Stated): string[] =>
  readOn && readOn < imagedOn ? [`Read on ${readOn}, and the films are of ${imagedOn}. A veterinarian looks at it.`] : [];

/** A second reader who finds the same has made another reading. */
function keyOf({ studyId }: Found, { reading: { number, readBy } }: Stated, protocol: Protocol, joints: Joint[]): string {
  const hex = createHash('sha256').update(JSON.stringify([studyId, number, readBy.toLowerCase(), readingKey(protocol, joints as JointReading[])])).digest('hex');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}
