import { formatValue, worseOf } from './value.js';
import type { JointReading, Protocol } from './types.js';

export interface DogsResult {
  kind: 'value' | 'atLeast' | 'incomplete' | 'none';
  /** A phrase for papers and screens: "0.44 (right, the looser hip)". */
  words: string;
  /** The worse joint's value; absent when the kind is "incomplete" or "none". */
  value?: number | string;
}

/**
 * What the joints say about the dog: the worse one speaks, joints are never added up.
 * Only "value" is a full result; "atLeast" and "incomplete" enter no standing.
 * @param joints a reading that `checkReading` does not refuse
 */
export function dogsResult(protocol: Protocol, joints: JointReading[]): DogsResult {
  const read = protocol.joints.flatMap((side) => joints.filter((reading) => reading.joint === side && reading.value !== undefined));
  const missing = protocol.joints.filter((side) => !read.some(({ joint }) => joint === side));
  if (read.length === 0) return { kind: 'none', words: `No result: neither ${protocol.region} could be read` };
  const worst = read.reduce((worse, reading) => (worseOf(protocol.value, worse.value!, reading.value!) === reading.value! ? reading : worse));
  const value = worst.value!;
  const text = formatValue(protocol.value, value);
  if (missing.length === 0) {
    const tie = read.every((reading) => reading.value === value);
    return { kind: 'value', value, words: tie ? `${text} (both ${protocol.region}s alike)` : `${text} (${worst.joint}, ${protocol.dog.worseWords})` };
  }
  if (protocol.dog.oneJoint === 'atLeast') {
    return { kind: 'atLeast', value, words: `at least ${text} (${worst.joint}; the ${missing.join(' and ')} ${protocol.region} could not be read)` };
  }
  return { kind: 'incomplete', words: `Incomplete: only the ${worst.joint} ${protocol.region} could be read, ${text}` };
}
