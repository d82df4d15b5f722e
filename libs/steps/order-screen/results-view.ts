import type { Said } from '#libs/words/said';
import type { StudyView } from '#libs/contracts/screens/order';
import { Bag } from '#libs/pathway/bag';
import type { FactOf } from '#libs/pathway/facts';
import { pictureResults } from '#libs/pathway/study-results';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { Z95 } from '#libs/science/measurement/measure';
import { compareWithRoom } from '#libs/science/protocols/compare-with-room';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';
import { roomEstimate, type RoomMarks } from '../quality/room-marks.js';
import type { Work } from '../record/work.js';
import { agreedJoints, keyings } from '../result/joints-of.js';
import { dogWords, jointName, jointWords } from './reading-words.js';

type Facts = Pick<Work, 'facts' | 'evaluation'>;
type Arrived = FactOf<'resultArrived'>;

const PROBLEM: Record<string, string> = { IDENTITY: 'The transponder on the reading is not this dog’s.', SIDES: 'Left and right may be swapped.', DATE: 'It is dated before the pictures.' };
const UNSEEN = 'shown when two people have keyed the same';

/** Every reading that came, whatever became of it. A sheet's values stay unseen while a second person has still to key them. */
export function resultsOf({ facts, evaluation }: Facts, id: string, rooms: readonly RoomMarks[] = []): StudyView['results'] {
  const standing = evaluation.studies[id]!;
  const protocol = findProtocol(standing.protocol, standing.version)!;
  const of = <T extends { study: string }>(all: T[]): T[] => all.filter((f) => f.study === id);
  const arrived = of(facts('resultArrived'));
  const stateOf = statesOf(facts, id, arrived);
  return arrived.map((f) => {
    const checked = of(facts('resultChecked')).filter((c) => c.result === f.result).flatMap((c) => c.problems);
    const agreed = agreedJoints(facts, f);
    const asked = agreed ? [f, ...keyings(facts, f)].flatMap((one) => ((one.detail?.ask as (string | Said)[] | undefined) ?? []).map((ask) => (typeof ask === 'string' ? t.known(ask) : t.said(ask)))) : [];
    return {
      id: f.result, ref: f.ref, channel: f.channel, reading: f.reading, at: f.at, by: (f.detail?.reader as string | undefined) ?? nameOf(f),
      joints: agreed ? agreed.map((j) => jointWords(protocol, j, t)) : unseen(protocol), dog: agreed ? dogWords(protocol, agreed, t) : t.known(UNSEEN),
      comment: (f.detail?.comment as string | null | undefined) ?? null, readOn: (f.detail?.readOn as string | null | undefined) ?? null,
      scan: f.scan ?? null, keyedBy: keyings(facts, f).map(nameOf), state: stateOf(f),
      room: agreed ? roomWords({ facts }, id, protocol, agreed as JointReading[], rooms) : null,
      problems: [...new Set([...asked, ...checked.filter((p) => p !== 'RANGE').map((p) => t.known(PROBLEM[p] ?? p))])],
    };
  });
}

function roomWords(work: Pick<Work, 'facts'>, study: string, protocol: Protocol, joints: JointReading[], rooms: readonly RoomMarks[]): string | null {
  const estimate = roomEstimate(work, study, protocol, rooms);
  if (!estimate) return null;
  const { words, fits } = compareWithRoom(protocol, joints, estimate);
  const decimals = protocol.value.kind === 'number' ? protocol.value.decimals : 0;
  const figure = (number: number) => t.said({ number, decimals, unit: '' });
  const range = (value: number) => t('{from} to {to}', { from: figure(Math.max(0, value - Z95 * estimate.standardError)), to: figure(value + Z95 * estimate.standardError) });
  return [t('Measured in the room: left may be {left}, right {right}.', { left: range(estimate.left), right: range(estimate.right) }), t.known(words), fits ? t('{fits} would fit.', { fits: t.known(fits) }) : ''].filter(Boolean).join(' ');
}

const nameOf = (f: object): string => (f as { byName?: string }).byName ?? '';
const unseen = (protocol: Protocol) => protocol.joints.map((joint) => ({ joint, name: jointName(protocol, joint, t), words: t.known(UNSEEN), flags: [] }));

/** Which readings wait is for the pathway to say: what is offered here is what may be accepted. */
function waitingOf(facts: Work['facts'], id: string): Set<string> {
  const bag = new Bag();
  for (const type of ['resultArrived', 'resultKeyed', 'resultRefused', 'resultWithdrawn', 'resultAccepted', 'conflictSettled'] as const) for (const f of facts(type)) if (f.study === id) bag.add(f);
  return new Set(pictureResults(bag).waiting.map((f) => f.result));
}

function statesOf(facts: Work['facts'], id: string, arrived: Arrived[]) {
  const of = <T extends { study: string }>(all: T[]): T[] => all.filter((f) => f.study === id);
  const accepted = of(facts('resultAccepted')).map((f) => f.result);
  const refused = new Set(of(facts('resultRefused')).map((f) => f.result));
  const withdrawn = new Set(of(facts('resultWithdrawn')).map((f) => f.result));
  const standing = accepted.findLast((result) => !withdrawn.has(result));
  const waiting = waitingOf(facts, id);
  const values = (f: Arrived) => keyings(facts, f).find((one) => keyings(facts, f).some((two) => two.by !== one.by && two.valuesHash === one.valuesHash))?.valuesHash ?? f.valuesHash;
  const amends = (later: Arrived, f: Arrived): boolean => later.ref === f.ref && later.reading === f.reading && later.rec > f.rec;
  const isCopy = (f: Arrived): boolean => {
    const before = arrived.slice(0, arrived.indexOf(f));
    const equal = (one: Arrived) => one !== f && one.reading === f.reading && values(one) === values(f);
    return arrived.some((one) => equal(one) && (waiting.has(one.result) || standing === one.result)) || before.some((one) => equal(one) && !before.some((later) => amends(later, one)));
  };
  return (f: Arrived): StudyView['results'][number]['state'] => {
    if (withdrawn.has(f.result)) return 'withdrawn';
    if (refused.has(f.result)) return 'refused';
    if (standing === f.result) return 'accepted';
    if (accepted.includes(f.result)) return 'superseded';
    if (waiting.has(f.result)) return 'waiting';
    const amended = arrived.some((other) => amends(other, f) && values(other) !== values(f));
    return !amended && isCopy(f) ? 'copy' : 'superseded';
  };
}
