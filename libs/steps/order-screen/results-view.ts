import type { Said } from '#libs/words/said';
import type { StudyView } from '#libs/contracts/screens/order';
import type { FactOf } from '#libs/pathway/facts';
import { pictureOf } from '#libs/pathway/picture';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { Z95 } from '#libs/science/measurement/measure';
import { compareWithRoom } from '#libs/science/protocols/compare-with-room';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';
import { roomEstimate, type RoomMarks } from '../quality/room-marks.js';
import type { Work } from '../record/work.js';
import { agreedJoints, keyings } from '../result/joints-of.js';
import { dogWords, jointName, jointWords } from './reading-words.js';

type Facts = Pick<Work, 'facts' | 'evaluation' | 'order'>;
type Arrived = FactOf<'resultArrived'>;

const PROBLEM: Record<string, string> = { IDENTITY: 'The transponder on the reading is not this dog’s.', SIDES: 'Left and right may be swapped.', DATE: 'It is dated before the pictures.' };
const UNSEEN = 'shown when two people have keyed the same';

/** Every reading that came, whatever became of it. A sheet's values stay unseen while a second person has still to key them. */
export function resultsOf({ facts, evaluation, order }: Facts, id: string, rooms: readonly RoomMarks[] = []): StudyView['results'] {
  const standing = evaluation.studies[id]!;
  const protocol = findProtocol(standing.protocol, standing.version)!;
  const of = <T extends { study: string }>(all: T[]): T[] => all.filter((f) => f.study === id);
  const arrived = of(facts('resultArrived'));
  const stateOf = statesOf({ facts, order }, id);
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

/** What became of each reading is for the pathway to say: what waits here is what may be accepted. */
function statesOf({ facts, order }: Pick<Facts, 'facts' | 'order'>, id: string) {
  const { waiting, copies, accepted, withdrawn } = pictureOf(order.facts, order.rules).studies.find((study) => study.id === id)!.results;
  const states = new Map<string, StudyView['results'][number]['state']>([
    ...copies.map((f) => [f.result, 'copy'] as const),
    ...waiting.map((f) => [f.result, 'waiting'] as const),
    ...facts('resultRefused').map((f) => [f.result, 'refused'] as const),
    ...withdrawn.map(({ result }) => [result.result, 'withdrawn'] as const),
  ]);
  if (accepted) states.set(accepted.result.result, 'accepted');
  return (f: Arrived) => states.get(f.result) ?? 'superseded';
}
