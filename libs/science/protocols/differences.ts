import { sameReading } from './same-reading.js';
import type { JointReading, Protocol, Side } from './types.js';
import { formatValue } from './value.js';

export interface Differences {
  joints: Side[];
  /** What can be told of two readings of the same films, for the person who asks the centre. Never which one is right. */
  told: string[];
}

const valueWords = (protocol: Protocol, reading: JointReading | undefined) => (reading?.value === undefined ? null : formatValue(protocol.value, reading.value));
const digits = (words: string) => [...words.replace(/\D/g, '')].sort().join('');

/** Named by their labels; what a "no" and an open answer have in common is no difference. */
const beside = (protocol: Protocol, one?: JointReading, other?: JointReading) =>
  protocol.findings.filter(({ code }) => (one?.findings?.[code] || undefined) !== (other?.findings?.[code] || undefined)).map(({ label }) => label.toLowerCase()).join('; ');

export function differencesOf(protocol: Protocol, one: JointReading[], other: JointReading[]): Differences {
  const of = (readings: JointReading[], side: Side) => readings.find(({ joint }) => joint === side);
  const only = (readings: JointReading[], side: Side) => readings.filter(({ joint }) => joint === side);
  const joints = protocol.joints.filter((side) => !sameReading(protocol, only(one, side), only(other, side)));
  const name = (side: Side) => `${side} ${protocol.region}`;
  const told = joints.length === 0 ? ['The two readings say the same.'] : [joints.length === protocol.joints.length ? `Both ${protocol.region}s differ.` : `Only the ${joints.map(name).join(' and ')} differs.`];
  for (const side of joints) {
    const [a, b] = [valueWords(protocol, of(one, side)), valueWords(protocol, of(other, side))];
    if (a === null && b === null) told.push(`The ${name(side)} has no value in either, for different reasons.`);
    else if (a === null || b === null) told.push(`The ${name(side)} has a value in one reading and none in the other.`);
    else if (a === b) told.push(`The ${name(side)} has the same value in both; what was found beside it differs: ${beside(protocol, of(one, side), of(other, side))}.`);
    else if (protocol.value.kind === 'number' && digits(a) === digits(b)) told.push(`The two values of the ${name(side)} hold the same digits in another order, so one may have been written wrongly.`);
  }
  const [left, right] = protocol.joints;
  if (left && right && joints.length === 2) {
    const swapped = valueWords(protocol, of(one, left)) === valueWords(protocol, of(other, right)) && valueWords(protocol, of(one, right)) === valueWords(protocol, of(other, left));
    told.push(swapped ? 'The values are the same with left and right exchanged.' : 'Exchanged sides do not explain it.');
  } else if (joints.length === 1) told.push('Exchanged sides do not explain it: the other side agrees.');
  return { joints, told };
}
