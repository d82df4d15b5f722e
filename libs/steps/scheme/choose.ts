import type { Choosing, ChoosingAsked } from '#libs/contracts/choosing';
import type { AgeBand } from '#libs/science/population/age-band';
import { FEWEST, groupSize } from '#libs/science/population/group-size';
import { moments } from '#libs/science/population/moments';
import { readPool } from '#libs/science/population/pool';
import { secondLookOfShare } from '#libs/science/population/second-look-share';
import type { NumberRule, Protocol } from '#libs/science/protocols/types';
import { leftToBreed, outlook, type Plan } from '#libs/science/selection/outlook';
import { choosingByGrade, publishedHeritabilities } from '#libs/science/selection/published-heritabilities';
import { correlatedResponse } from '#libs/science/selection/response';
import { t } from '#libs/words/spoken';
import { badInput, notFound } from '../record/step-error.js';
import type { StepDeps } from '../record/step-deps.js';
import { histogramOfCounts, type SetContent, type ValueCounts } from '../statistics/set-content.js';
import { viewOf } from './choosing-sets.js';
import type { Lead } from './scheme-screen.js';

/** Further ahead too much else will have changed: our own choice, no source. */
const GENERATIONS = 3;

interface ToldSet { id: string; pool: string; breed: string; age_band: AgeBand; frozen_on: string; n: number; counts: { dog: ValueCounts } | null; parts: SetContent['parts'] | null; unsent: number }

/** What breeding from a share would do and cost, reckoned from a frozen set: no dog is looked at, and nothing is stored. */
export async function choose(deps: StepDeps, lead: Lead, asked: ChoosingAsked): Promise<Choosing> {
  const [row] = await deps.db.outside((tx) => tx.$queryRaw<{ told: ToldSet | null }[]>`SELECT app.scheme_set(${lead.scheme}::uuid, ${asked.set}::uuid) AS told`);
  const told = row?.told;
  if (!told) throw notFound();
  const set = viewOf({ ...told, ageBand: told.age_band, frozenOn: told.frozen_on });
  if (set.refused || !told.counts) throw badInput('set', set.refused ?? t('This set cannot be reckoned with.'));
  const { protocol } = readPool(told.pool)!;
  const rule = protocol.value as NumberRule;
  const { mean, sd } = moments(histogramOfCounts(told.pool, told.counts.dog)!);
  if (sd === 0) throw badInput('set', t('All dogs of this set have one value: without a difference there is nothing to choose.'));
  const [dogs, bitches] = [{ screened: asked.dogs, share: asked.dogsOf100 / 100 }, { screened: asked.bitches, share: asked.bitchesOf100 / 100 }];
  const plan: Plan = { mean, sd, least: rule.min, dogs, bitches, generations: GENERATIONS };
  const left = leftToBreed(plan);
  return {
    set, mean, sd, measure: rule.name, unit: rule.unit, decimals: rule.decimals, warning: groupSize(told.n) === 'withWarning', unsent: told.unsent < FEWEST.toSayAnything ? null : told.unsent, senders: told.parts?.senders ?? null,
    left: { dogs: left.dogs, bitches: left.bitches, effective: left.effective, inbreeding: left.inbreeding },
    rows: publishedHeritabilities[protocol.code]!.map(({ citation, ...row }) => ({ ...row, source: citation, means: outlook(plan, row.heritability) })),
    secondLook: secondLook(protocol, dogs.share, bitches.share),
    byGrade: (choosingByGrade[protocol.code] ?? []).map((p) => ({ population: p.population, part: correlatedResponse(p.ofGrade, p.ofValue, p.geneticCorrelation), source: p.citation })),
  };
}

function secondLook({ repeatability }: Protocol, ofDogs: number, ofBitches: number): Choosing['secondLook'] {
  if (!repeatability.known) return null;
  const leave = (share: number) => (share === 1 ? 0 : secondLookOfShare(share, repeatability.icc).leave);
  return { dogs: leave(ofDogs), bitches: leave(ofBitches), source: repeatability.citation };
}
