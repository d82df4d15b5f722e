import { formatValue } from './value.js';
import type { JointReading, Protocol } from './types.js';

/**
 * A reading as one line of text that does not depend on the order in which it was entered.
 * Two keyings or two channels brought the same reading exactly when their lines are equal.
 * A finding answered "no" is the same as one not entered.
 */
export function readingKey(protocol: Protocol, joints: JointReading[]): string {
  return protocol.joints
    .flatMap((side) => joints.filter(({ joint }) => joint === side))
    .map(({ joint, value, reason, findings }) => {
      const found = Object.entries(findings ?? {})
        .filter(([, answer]) => answer !== false)
        .sort(([a], [b]) => (a < b ? -1 : 1));
      return JSON.stringify([joint, value === undefined ? null : formatValue(protocol.value, value), reason ?? null, found]);
    })
    .join('\n');
}

export function sameReading(protocol: Protocol, a: JointReading[], b: JointReading[]): boolean {
  return readingKey(protocol, a) === readingKey(protocol, b);
}
