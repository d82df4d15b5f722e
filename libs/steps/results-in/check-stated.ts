import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
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
  asks: Tellable[];
}
export type Checked = Meant | { told: Tellable[]; found?: Found };

export const isMeant = (checked: Checked): checked is Meant => 'key' in checked;

const DAY_MS = 86_400_000;

/** What a reading would be at its order. Nothing is stored. */
export async function checkStated(deps: StepDeps, bringer: Bringer, stated: Stated): Promise<Checked> {
  const found = await findPackage(deps, bringer, stated.reading);
  if ('told' in found) return found;
  const { protocol: code, version } = found.summary.study;
  const protocol = findProtocol(code, version);
  if (!protocol) return { found, told: [said('The study {study}, version {version}, is not installed here. Tell whoever runs the server.', { study: code, version })] };
  const { joints, problems } = stated.joints(protocol);
  const checks = checkReading(protocol, joints as JointReading[]);
  const wrong = [...problems, ...(problems.length > 0 ? [] : checks.filter((p) => p.weight === 'refuse').map((p) => p.told)), ...notYet(deps, stated)];
  if (wrong.length > 0) return { found, told: wrong };
  return { found, protocol, joints, key: keyOf(found, stated, protocol, joints), asks: [...checks.map((p) => p.told), ...otherDog(found, stated), ...readBeforeImaged(found, stated)] };
}

/** A centre may be a day ahead of the server. */
function notYet({ clock }: StepDeps, { reading: { readOn } }: Stated): Tellable[] {
  const latest = new Date(clock.now().getTime() + DAY_MS).toISOString().slice(0, 10);
  return readOn && readOn > latest ? [said('Read on: {day} is still to come. Correct the day.', { day: readOn })] : [];
}

const otherDog = ({ summary: { dog } }: Found, { reading: { dogNumber } }: Stated): Tellable[] =>
  dogNumber && normaliseScan(dogNumber) !== normaliseScan(dog.number) ? [said('The dog’s number on the reading is not the one that stands on the package. A veterinarian looks at it.')] : [];

const readBeforeImaged = ({ summary: { imagedOn } }: Found, { reading: { readOn } }: Stated): Tellable[] =>
  readOn && readOn < imagedOn ? [said('Read on {readOn}, and the films are of {imagedOn}. A veterinarian looks at it.', { readOn, imagedOn })] : [];

/** A second reader who finds the same has made another reading. */
function keyOf({ studyId }: Found, { reading: { number, readBy } }: Stated, protocol: Protocol, joints: Joint[]): string {
  const hex = createHash('sha256').update(JSON.stringify([studyId, number, readBy.toLowerCase(), readingKey(protocol, joints as JointReading[])])).digest('hex');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}
