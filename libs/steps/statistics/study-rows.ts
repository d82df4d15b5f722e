import { ageBandOn, type AgeBand } from '#libs/science/population/age-band';
import { inSteps } from '#libs/science/population/histogram';
import { poolOf } from '#libs/science/population/pool';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { countingReading } from '#libs/science/protocols/counting-reading';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { placeOf } from '#libs/science/protocols/value';
import { filmsOf } from '../dispatch/films-of.js';
import type { Work } from '../record/work.js';
import { acceptedReadings } from '../result/accepted-readings.js';

export type Facts = Pick<Work, 'facts' | 'order' | 'evaluation'>;

/** What one study of an order says to statistics. */
export interface StudyRow {
  study: string;
  protocol: string;
  pool: string;
  age_band: AgeBand;
  born_year: number;
  imaged_year: number;
  unsent: boolean;
  accepted_at: string | null;
  reading: string | null;
  counts: boolean;
  dog_value: number | null;
  left_value: number | null;
  right_value: number | null;
}

/** Every study of an order that ever had a film, or a reading of films taken elsewhere. */
export function studyRows(work: Facts): StudyRow[] {
  const readings = acceptedReadings({ order: work.order.id, accession: work.order.accession, dog: '', studies: Object.values(work.evaluation.studies), facts: work.order.facts });
  const filmed = new Set([...work.facts('exposureTaken'), ...work.facts('exposureAssigned')].flatMap((f) => f.serves));
  const accepted = new Set(work.facts('resultAccepted').map((f) => f.study));
  return Object.values(work.evaluation.studies).filter(({ id }) => filmed.has(id) || accepted.has(id)).flatMap((study) => {
    const protocol = findProtocol(study.protocol, study.version);
    if (!protocol) return [];
    const own = readings.filter((r) => r.study === study.id);
    const reading = countingReading(protocol, own);
    const joints = (reading?.joints ?? []) as JointReading[];
    const { born, exposed } = agesOf(work, study.id);
    const value = (side: string) => stepsOf(protocol, joints.find((j) => j.joint === side)?.value);
    const result = dogsResult(protocol, joints);
    return [{
      study: study.id, protocol: protocol.code, pool: poolOf(protocol, joints), age_band: ageBandOn(born < exposed ? born : exposed, exposed), born_year: yearOf(born), imaged_year: yearOf(exposed),
      unsent: work.evaluation.order.imagedNotSent.includes(study.id),
      accepted_at: own[0]?.acceptedAt ?? null, reading: reading?.id ?? null, counts: reading !== undefined && work.evaluation.order.statistics && whyNotComparable(work, study.id, protocol, joints) === null,
      dog_value: result.kind === 'value' ? stepsOf(protocol, result.value) : null, left_value: value('left'), right_value: value('right'),
    }];
  });
}

export type NotComparable = 'noValue' | 'viewsMissing' | 'arthrosis' | 'operated';

/** Why a reading is put beside no other, whatever its owner has agreed to; null where it may be. */
export function whyNotComparable({ facts, evaluation }: Pick<Facts, 'facts' | 'evaluation'>, study: string, protocol: Protocol, joints: JointReading[]): NotComparable | null {
  if (dogsResult(protocol, joints).kind !== 'value') return 'noValue';
  const flag = protocol.findings.find((f) => f.keepsOutOfStandings && joints.some((j) => j.findings?.[f.code] === true));
  if (flag) return flag.code === 'operated' ? 'operated' : 'arthrosis';
  if (facts('answersGiven').map((f) => f.answers.operated).filter((answer) => answer !== undefined).at(-1) === 'yes') return 'operated';
  return evaluation.studies[study]!.missing.length > 0 ? 'viewsMissing' : null;
}

/** The latest day on which the dog may have been born, and the day of its last film. */
export function agesOf(work: Facts, study: string): { born: string; exposed: string } {
  const born = birthOf(work);
  const exposed = filmsOf(work as Work, study).map((f) => f.imageDay).sort().at(-1) ?? work.facts('resultArrived').find((f) => f.study === study)?.at.slice(0, 10) ?? work.order.facts[0]!.at.slice(0, 10);
  return { born, exposed };
}

function birthOf({ facts, order }: Facts): string {
  const birth = facts('dogRestated').findLast((f) => f.birth !== undefined)?.birth ?? facts('orderOpened').at(-1)?.birth;
  return birth?.latest ?? order.born.latest;
}

const yearOf = (day: string): number => Number(day.slice(0, 4));

function stepsOf(protocol: Protocol, value: number | string | undefined): number | null {
  if (value === undefined) return null;
  const { value: rule } = protocol;
  return rule.kind === 'number' ? inSteps(Number(value), rule.decimals) : placeOf(rule, value);
}
