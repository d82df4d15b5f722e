import { inEnglish, said, type Said } from '#libs/words/said';
import { saidValue, worseOf } from './value.js';
import type { JointReading, Protocol } from './types.js';

export interface DogsResult {
  kind: 'value' | 'atLeast' | 'incomplete' | 'none';
  /** A phrase for papers and screens: "0.44 (right, the looser hip)". */
  words: string;
  /** The same for any language. */
  said: Said;
  /** The worse joint's value; absent when the kind is "incomplete" or "none". */
  value?: number | string;
}

/**
 * What the joints say about the dog: the worse one speaks, joints are never added up.
 * Only "value" is a full result; "atLeast" and "incomplete" enter no standing.
 * @param joints a reading that `checkReading` does not refuse
 */
export function dogsResult(protocol: Protocol, joints: JointReading[]): DogsResult {
  const result = resultOf(protocol, joints);
  return { ...result, words: inEnglish(result.said) };
}

function resultOf(protocol: Protocol, joints: JointReading[]): Omit<DogsResult, 'words'> {
  const { region } = protocol;
  const read = protocol.joints.flatMap((side) => joints.filter((reading) => reading.joint === side && reading.value !== undefined));
  const missing = protocol.joints.filter((side) => !read.some(({ joint }) => joint === side));
  if (read.length === 0) return { kind: 'none', said: said('No result: neither {region} could be read', { region }) };
  const worst = read.reduce((worse, reading) => (worseOf(protocol.value, worse.value!, reading.value!) === reading.value! ? reading : worse));
  const [value, side] = [worst.value!, worst.joint];
  const text = saidValue(protocol.value, value);
  if (missing.length === 0) {
    const tie = read.every((reading) => reading.value === value);
    return { kind: 'value', value, said: tie ? said('{value} (both {region}s alike)', { value: text, region }) : said('{value} ({side}, {worse})', { value: text, side, worse: said(protocol.dog.worseWords) }) };
  }
  if (protocol.dog.oneJoint === 'atLeast') {
    return { kind: 'atLeast', value, said: said('at least {value} ({side}; the {missing} {region} could not be read)', { value: text, side, missing: missing.join(' and '), region }) };
  }
  return { kind: 'incomplete', said: said('Incomplete: only the {side} {region} could be read, {value}', { side, region, value: text }) };
}
