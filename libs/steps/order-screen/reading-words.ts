import type { Joint } from '#libs/contracts/common';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import { saidFinding } from '#libs/science/protocols/finding-words';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { saidValue } from '#libs/science/protocols/value';
import type { Words } from '#libs/words/words';

export const jointName = (protocol: Protocol, side: string, t: Words): string => t.known(`${side === 'left' ? 'Left' : 'Right'} ${protocol.region}`);

/** A joint's value, or its reason in words: never a dash. The same words on screen, paper, CSV and API. */
export function jointWords(protocol: Protocol, joint: Joint, t: Words): { joint: string; name: string; words: string; flags: string[] } {
  const words = joint.value !== undefined
    ? t.said(saidValue(protocol.value, joint.value))
    : t('not readable: {reason}', { reason: t.known(protocol.noValue.find((r) => r.code === joint.reason)?.words ?? 'no reason was given') });
  const flags = protocol.findings.flatMap((f) => {
    const found = joint.findings?.[f.code];
    if (found === undefined || found === false) return [];
    return [t.said(saidFinding(f, found))];
  });
  return { joint: joint.joint, name: jointName(protocol, joint.joint, t), words, flags };
}

export const dogWords = (protocol: Protocol, joints: Joint[], t: Words): string => t.said(dogsResult(protocol, joints as JointReading[]).said);

/** What a form for a reading needs to know of a protocol. */
export function readingForm(protocol: Protocol, t: Words) {
  const value = protocol.value.kind === 'number'
    ? { kind: 'number' as const, unit: protocol.value.unit, min: protocol.value.min, max: protocol.value.max, decimals: protocol.value.decimals, grades: [] }
    : { kind: 'grade' as const, unit: '', min: null, max: null, decimals: 0, grades: protocol.value.grades.map((g) => g.code) };
  return {
    joints: protocol.joints.map((joint) => ({ joint, name: jointName(protocol, joint, t) })),
    value,
    noValueReasons: protocol.noValue.map(({ code, words }) => ({ code, words: t.known(words) })),
    findings: protocol.findings.map((f) => ({
      code: f.code, words: t.known(f.label), kind: f.kind, choices: f.kind === 'choice' ? f.choices.map(({ code, words }) => ({ code, words: t.known(words) })) : [],
      unit: f.kind === 'number' ? f.unit : '', min: f.kind === 'number' ? f.min : null, max: f.kind === 'number' ? f.max : null, required: f.requiredWithValue === true,
    })),
  };
}
