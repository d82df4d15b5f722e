import type { Place, Standing } from '#libs/contracts/standing';
import { ageBandOn, ageBandWords } from '#libs/science/population/age-band';
import { poolOf } from '#libs/science/population/pool';
import { standing } from '#libs/science/population/standing';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import { shortCitation } from '#libs/science/short-citation';
import type { Work } from '../record/work.js';
import { protocolOf } from '../result/check-joints.js';
import { jointsOf } from '../result/joints-of.js';
import { histogramOfCounts, type SetContent, type ValueCounts } from '../statistics/set-content.js';
import { agesOf, whyNotComparable } from '../statistics/study-rows.js';

/** A set as the database tells it: without counts below twenty dogs, and not at all below five. */
interface ToldSet { frozen_on: string; n: number; counts: { dog: ValueCounts } | null; parts: SetContent['parts'] | null; unsent: number; from_year: number; to_year: number }

/**
 * Where the dog stands in the set that is in force now. A letter that goes again brings the place that the first one
 * gave: a dog's place on its papers does not drift.
 */
export async function standingOf(work: Work, study: string, result: string): Promise<Standing> {
  const told = work.facts('letterReleased').findLast((f) => f.study === study && f.result === result)?.detail?.standing as Standing | undefined;
  return told ?? standingNow(work, study, result);
}

async function standingNow(work: Work, study: string, result: string): Promise<Standing> {
  const protocol = protocolOf(work, study);
  const arrived = work.facts('resultArrived').find((f) => f.study === study && f.result === result)!;
  const joints = jointsOf(work.facts, arrived) as JointReading[];
  const none = (why: Extract<Standing, { kind: 'none' }>['why'], n: number | null = null): Standing => ({ kind: 'none', why, region: protocol.region, n });
  const kept = whyNotComparable(work, study, protocol, joints);
  if (kept) return none(kept);
  if (!protocol.repeatability.known || protocol.value.kind !== 'number') return none('notMeasured');
  // As the scheme's design has it: a standing is given with the owner's yes to the breed's statistics.
  if (!work.evaluation.order.statistics) return none('noConsent');
  const { born, exposed } = agesOf(work, study);
  const [pool, band] = [poolOf(protocol, joints), ageBandOn(born, exposed)];
  const [row] = await work.tx.$queryRaw<{ told: ToldSet | null }[]>`SELECT app.set_in_force(${work.order.id}::uuid, ${pool}, ${band}) AS told`;
  const set = row?.told;
  if (!set) return none('noSet');
  if (!set.counts) return none('tooFew', set.n);
  const found = standing(histogramOfCounts(pool, set.counts.dog)!, Number(dogsResult(protocol, joints).value), protocol.repeatability);
  if (found.kind !== 'place') return none('tooFew', set.n);
  return {
    kind: 'place', ...found.placesOfTwenty, n: found.n, warning: found.warning, breed: work.order.breed, age: ageBandWords[band], frozenOn: set.frozen_on, fromYear: set.from_year, toYear: set.to_year,
    unsent: set.unsent, senders: set.parts?.senders ?? null, ends: endsOf(protocol), halvesOneIn: Math.round(1 / found.changeHalves), source: shortCitation(found.citation),
  };
}

/** Laxity is spoken of as tight and loose; of any other measure only the number is known. */
const endsOf = ({ code, region }: Protocol): Place['ends'] => (code === 'hipLaxity' ? { low: 'tightest', high: 'loosest', of: `${region}s` } : { low: 'lowest', high: 'highest', of: 'number' });
