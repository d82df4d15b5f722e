import { smallestRealChange, standardError } from './second-look.js';
import type { JointReading, Protocol, Side } from './types.js';
import { formatValue } from './value.js';

export interface Change {
  joint: Side;
  /** As they are written; null where that joint had no value. */
  before: string | null;
  now: string | null;
  /** Cannot be told where a value is missing or nobody has measured how far two looks differ. */
  verdict: 'within' | 'beyond' | 'cannotTell';
  words: string;
}

/** A dog that was examined again, joint by joint: whether the values differ by more than two looks at the same joint would. */
export function changesOf(protocol: Protocol, before: JointReading[], now: JointReading[]): Change[] {
  return protocol.joints.map((joint) => changeOf(protocol, joint, valueOf(before, joint), valueOf(now, joint)));
}

const valueOf = (reading: JointReading[], side: Side) => reading.find(({ joint }) => joint === side)?.value;

function changeOf(protocol: Protocol, joint: Side, before: number | string | undefined, now: number | string | undefined): Change {
  const { value: rule, repeatability, region } = protocol;
  const written = (value: number | string | undefined) => (value === undefined ? null : formatValue(rule, value));
  const change = { joint, before: written(before), now: written(now) };
  const lead = `${joint === 'left' ? 'Left' : 'Right'} ${region}: ${change.before ?? 'not readable'} then, ${change.now ?? 'not readable'} now.`;
  if (before === undefined || now === undefined) return { ...change, verdict: 'cannotTell', words: `${lead} Without both values no change can be told.` };
  if (before === now) return { ...change, verdict: 'within', words: `${lead} There is no change.` };
  if (!repeatability.known || typeof before !== 'number' || typeof now !== 'number') {
    return { ...change, verdict: 'cannotTell', words: `${lead} How far two readings of one joint may differ has not been published, so it cannot be told whether the joint has changed.` };
  }
  const smallest = smallestRealChange(standardError(repeatability.sd, repeatability.icc));
  const within = Math.abs(now - before) < smallest;
  const figure = smallest.toFixed(rule.kind === 'number' ? rule.decimals : 2);
  return {
    ...change,
    verdict: within ? 'within' : 'beyond',
    words: within
      ? `${lead} The change is within the error of the reading: two looks at the same joint may differ by up to ${figure}.`
      : `${lead} The change is larger than the error of the reading, which is up to ${figure} between two looks at the same joint.`,
  };
}
