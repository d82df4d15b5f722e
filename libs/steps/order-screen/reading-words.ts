import type { Joint } from '#libs/contracts/common';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { formatValue } from '#libs/science/protocols/value';

export const jointName = (protocol: Protocol, side: string): string => `${side === 'left' ? 'Left' : 'Right'} ${protocol.region}`;

/** A joint's value, or its reason in words: never a dash. The same words on screen, paper, CSV and API. */
export function jointWords(protocol: Protocol, joint: Joint): { joint: string; name: string; words: string; flags: string[] } {
  const words = joint.value !== undefined
    ? formatValue(protocol.value, joint.value)
    : `not readable: ${protocol.noValue.find((r) => r.code === joint.reason)?.words ?? 'no reason was given'}`;
  const flags = protocol.findings.flatMap((f) => {
    const found = joint.findings?.[f.code];
    if (found === undefined || found === false) return [];
    if (f.kind === 'yesNo') return [f.label];
    if (f.kind === 'choice') return [`${f.label}: ${f.choices.find((c) => c.code === found)?.words ?? String(found)}`];
    return [`${f.label} ${String(found)}${f.unit}`];
  });
  return { joint: joint.joint, name: jointName(protocol, joint.joint), words, flags };
}

export const dogWords = (protocol: Protocol, joints: Joint[]): string => dogsResult(protocol, joints as JointReading[]).words;

/** What a form for a reading needs to know of a protocol. */
export function readingForm(protocol: Protocol) {
  const value = protocol.value.kind === 'number'
    ? { kind: 'number' as const, unit: protocol.value.unit, min: protocol.value.min, max: protocol.value.max, decimals: protocol.value.decimals, grades: [] }
    : { kind: 'grade' as const, unit: '', min: null, max: null, decimals: 0, grades: protocol.value.grades.map((g) => g.code) };
  return {
    joints: protocol.joints.map((joint) => ({ joint, name: jointName(protocol, joint) })),
    value,
    noValueReasons: protocol.noValue.map(({ code, words }) => ({ code, words })),
    findings: protocol.findings.map((f) => ({
      code: f.code, words: f.label, kind: f.kind, choices: f.kind === 'choice' ? f.choices.map(({ code, words }) => ({ code, words })) : [],
      unit: f.kind === 'number' ? f.unit : '', min: f.kind === 'number' ? f.min : null, max: f.kind === 'number' ? f.max : null, required: f.requiredWithValue === true,
    })),
  };
}
