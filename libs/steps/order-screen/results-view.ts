import type { StudyView } from '#libs/contracts/screens/order';
import type { FactOf } from '#libs/pathway/facts';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { Protocol } from '#libs/science/protocols/types';
import type { Work } from '../record/work.js';
import { agreedJoints, keyings } from '../result/joints-of.js';
import { dogWords, jointName, jointWords } from './reading-words.js';

type Facts = Pick<Work, 'facts' | 'evaluation'>;
type Arrived = FactOf<'resultArrived'>;

const PROBLEM: Record<string, string> = { IDENTITY: 'The transponder on the reading is not this dog’s.', SIDES: 'Left and right may be swapped.', DATE: 'It is dated before the pictures.' };
const UNSEEN = 'shown when two people have keyed the same';

/** Every reading that came, whatever became of it. A sheet's values stay unseen while a second person has still to key them. */
export function resultsOf({ facts, evaluation }: Facts, id: string): StudyView['results'] {
  const standing = evaluation.studies[id]!;
  const protocol = findProtocol(standing.protocol, standing.version)!;
  const of = <T extends { study: string }>(all: T[]): T[] => all.filter((f) => f.study === id);
  const arrived = of(facts('resultArrived'));
  const stateOf = statesOf(facts, id, arrived);
  return arrived.map((f) => {
    const checked = of(facts('resultChecked')).filter((c) => c.result === f.result).flatMap((c) => c.problems);
    const agreed = agreedJoints(facts, f);
    const asked = agreed ? [f, ...keyings(facts, f)].flatMap((one) => (one.detail?.ask as string[] | undefined) ?? []) : [];
    return {
      id: f.result, ref: f.ref, channel: f.channel, reading: f.reading, at: f.at, by: (f.detail?.reader as string | undefined) ?? nameOf(f),
      joints: agreed ? agreed.map((j) => jointWords(protocol, j)) : unseen(protocol), dog: agreed ? dogWords(protocol, agreed) : UNSEEN,
      comment: (f.detail?.comment as string | null | undefined) ?? null, readOn: (f.detail?.readOn as string | null | undefined) ?? null,
      scan: f.scan ?? null, keyedBy: keyings(facts, f).map(nameOf), state: stateOf(f),
      problems: [...new Set([...asked, ...checked.filter((p) => p !== 'RANGE').map((p) => PROBLEM[p] ?? p)])],
    };
  });
}

const nameOf = (f: object): string => (f as { byName?: string }).byName ?? '';
const unseen = (protocol: Protocol) => protocol.joints.map((joint) => ({ joint, name: jointName(protocol, joint), words: UNSEEN, flags: [] }));

function statesOf(facts: Work['facts'], id: string, arrived: Arrived[]) {
  const of = <T extends { study: string }>(all: T[]): T[] => all.filter((f) => f.study === id);
  const accepted = of(facts('resultAccepted')).map((f) => f.result);
  const refused = new Set(of(facts('resultRefused')).map((f) => f.result));
  const withdrawn = new Set(of(facts('resultWithdrawn')).map((f) => f.result));
  const standing = accepted.findLast((result) => !withdrawn.has(result));
  const settled = of(facts('conflictSettled')).at(-1);
  const values = (f: Arrived) => keyings(facts, f).find((one) => keyings(facts, f).some((two) => two.by !== one.by && two.valuesHash === one.valuesHash))?.valuesHash ?? f.valuesHash;
  const seen = new Set<string>();
  return (f: Arrived): StudyView['results'][number]['state'] => {
    const key = values(f) + f.reading;
    const copy = seen.has(key);
    seen.add(key);
    if (withdrawn.has(f.result)) return 'withdrawn';
    if (refused.has(f.result)) return 'refused';
    if (standing === f.result) return 'accepted';
    if (accepted.includes(f.result)) return 'superseded';
    if (copy) return 'copy';
    const newer = arrived.some((other) => other.ref === f.ref && other.reading === f.reading && other.rec > f.rec);
    return newer || (settled && settled.keep !== f.result && settled.rec > f.rec) ? 'superseded' : 'waiting';
  };
}
