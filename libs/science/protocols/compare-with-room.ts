import { digitSlipped } from './digit-slipped.js';
import { standardError } from './second-look.js';
import { sidesSwapped, type RoomEstimate, type SidesAnswer } from './sides-swapped.js';
import type { JointReading, Protocol } from './types.js';

export interface RoomAnswer {
  verdict: SidesAnswer['verdict'] | 'digitSlipped';
  /** Without any number from the room: also the desk reads it. */
  words: string;
  /** What would fit in the place of a slipped digit, as written; for the veterinarian alone. */
  fits?: string;
}

/**
 * A reading held against what was measured in the room: sides exchanged, a digit slipped, far off, in agreement, or that
 * it cannot be told. The estimate never corrects a reading; a person asks the reader.
 * @throws ScienceError BAD_ESTIMATE
 */
export function compareWithRoom(protocol: Protocol, reading: JointReading[], estimate: RoomEstimate): RoomAnswer {
  const sides = sidesSwapped(protocol, reading, estimate);
  const { value: rule, repeatability } = protocol;
  if (sides.verdict !== 'differs' || rule.kind !== 'number' || !repeatability.known) return sides;
  const sd = Math.hypot(standardError(repeatability.sd, repeatability.icc), estimate.standardError);
  for (const { joint, value } of reading) {
    const meant = typeof value === 'number' ? digitSlipped(rule, value, estimate[joint], sd) : undefined;
    if (meant === undefined) continue;
    const read = (value as number).toFixed(rule.decimals);
    return { verdict: 'digitSlipped', fits: meant.toFixed(rule.decimals), words: `The ${joint} ${protocol.region} reads ${read}, far from the room estimate, and a digit may have slipped. Ask the reader before accepting.` };
  }
  return sides;
}
