import { inEnglish, said, type Figure, type Said } from '#libs/words/said';
import { smallestRealChange, standardError } from './second-look.js';
import type { JointReading, Protocol, Side } from './types.js';
import { formatValue, saidValue } from './value.js';

export interface Change {
  joint: Side;
  /** As they are written; null where that joint had no value. */
  before: string | null;
  now: string | null;
  /** Cannot be told where a value is missing or nobody has measured how far two looks differ. */
  verdict: 'within' | 'beyond' | 'cannotTell';
  words: string;
  /** The same for any language, sentence by sentence. */
  said: Said[];
}

/** A dog that was examined again, joint by joint: whether the values differ by more than two looks at the same joint would. */
export function changesOf(protocol: Protocol, before: JointReading[], now: JointReading[]): Change[] {
  return protocol.joints.map((joint) => changeOf(protocol, joint, valueOf(before, joint), valueOf(now, joint)));
}

const valueOf = (reading: JointReading[], side: Side) => reading.find(({ joint }) => joint === side)?.value;

function changeOf(protocol: Protocol, joint: Side, before: number | string | undefined, now: number | string | undefined): Change {
  const { verdict, smallest } = verdictOf(protocol, before, now);
  const written = (value: number | string | undefined) => (value === undefined ? said('not readable') : saidValue(protocol.value, value));
  const lead = said('{joint}: {before} then, {now} now.', { joint: said(`${joint === 'left' ? 'Left' : 'Right'} ${protocol.region}`), before: written(before), now: written(now) });
  const told = [lead, said(verdictWords(verdict, before === undefined || now === undefined, before === now), smallest && { figure: smallest })];
  const plain = (value: number | string | undefined) => (value === undefined ? null : formatValue(protocol.value, value));
  return { joint, before: plain(before), now: plain(now), verdict, words: told.map(inEnglish).join(' '), said: told };
}

function verdictOf({ value: rule, repeatability }: Protocol, before: number | string | undefined, now: number | string | undefined): { verdict: Change['verdict']; smallest?: Figure } {
  if (before === undefined || now === undefined) return { verdict: 'cannotTell' };
  if (before === now) return { verdict: 'within' };
  if (!repeatability.known || typeof before !== 'number' || typeof now !== 'number') return { verdict: 'cannotTell' };
  const smallest = smallestRealChange(standardError(repeatability.sd, repeatability.icc));
  return { verdict: Math.abs(now - before) < smallest ? 'within' : 'beyond', smallest: { number: smallest, decimals: rule.kind === 'number' ? rule.decimals : 2, unit: '' } };
}

function verdictWords(verdict: Change['verdict'], missing: boolean, same: boolean): string {
  if (missing) return 'Without both values no change can be told.';
  if (same) return 'There is no change.';
  if (verdict === 'cannotTell') return 'How far two readings of one joint may differ has not been published, so it cannot be told whether the joint has changed.';
  return verdict === 'within'
    ? 'The change is within the error of the reading: two looks at the same joint may differ by up to {figure}.'
    : 'The change is larger than the error of the reading, which is up to {figure} between two looks at the same joint.';
}
