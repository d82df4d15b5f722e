import type { BreedPicture } from '#libs/contracts/screens/breeds';
import type { AgeBand } from '#libs/science/population/age-band';
import { FEWEST } from '#libs/science/population/group-size';
import { cumulative } from '#libs/science/population/cumulative';
import { readPool } from '#libs/science/population/pool';
import { quantile } from '#libs/science/population/quantile';
import { quantileInterval } from '#libs/science/population/quantile-interval';
import { shareScreened, type BornBetween } from '#libs/science/population/share-screened';
import { wilson } from '#libs/science/population/wilson';
import type { GradeRule, NumberRule } from '#libs/science/protocols/types';
import { audit } from '#libs/platform/audit/audit';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';
import { histogramOfCounts, type SetContent } from '../statistics/set-content.js';
import { birthsOf, knownBirths } from './births-of.js';
import type { Lead } from './scheme-screen.js';
import { setNames } from './set-names.js';

/** As the database tells a set: without counts and parts below twenty dogs. */
interface ToldSet { id: string; pool: string; breed: string; age_band: AgeBand; frozen_on: string; n: number; counts: SetContent['counts'] | null; parts: SetContent['parts'] | null; unsent: number; from_year: number; to_year: number }

const QUANTILES = [[0.1, 'a tenth lie below'], [0.25, 'a quarter lies below'], [0.5, 'half lies below'], [0.75, 'three quarters lie below'], [0.9, 'nine tenths lie below']] as const;

/** One breed for the lead and for geneticists, reckoned from the frozen counts alone. */
export async function breedPicture(deps: StepDeps, lead: Lead, wanted: string): Promise<BreedPicture> {
  const { told, births } = await deps.db.outside(async (tx) => {
    await audit(tx, { by: lead.id, role: 'lead', action: 'viewBreeds', subject: wanted });
    const [row] = await tx.$queryRaw<{ told: ToldSet | null }[]>`SELECT app.scheme_set(${lead.scheme}::uuid, ${wanted}::uuid) AS told`;
    if (!row?.told) throw notFound();
    return { told: row.told, births: await birthsOf(tx, lead, row.told.breed) };
  });
  const rule = readPool(told.pool)?.protocol.value;
  const few = told.unsent < FEWEST.toSayAnything;
  const xrayed = told.n + told.unsent;
  return {
    id: told.id, ...setNames({ ...told, ageBand: told.age_band }), n: told.n, frozenOn: told.frozen_on, fromYear: told.from_year, toYear: told.to_year, warning: told.n < FEWEST.withoutWarning,
    unsent: few ? null : told.unsent, sent: few ? null : { share: told.n / xrayed, interval: wilson(told.n, xrayed) }, senders: told.parts?.senders ?? null,
    values: told.counts && told.parts && rule?.kind === 'number' ? valuesOf(told.pool, rule, told.counts, told.parts, knownBirths(births)) : null,
    births,
    grades: told.counts && rule?.kind === 'grade' ? gradesOf(rule, told.counts.dog, told.n) : null,
  };
}

function valuesOf(pool: string, rule: NumberRule, counts: SetContent['counts'], parts: SetContent['parts'], births: ReadonlyMap<number, number>): BreedPicture['values'] {
  const { region, dog } = readPool(pool)!.protocol;
  const beside = <Part extends BornBetween>(part: Part) => ({ ...part, screened: shareScreened(part, births) });
  const groups = [counts.dog, counts.left, counts.right].map((c) => histogramOfCounts(pool, c)!);
  return {
    name: rule.name, unit: rule.unit, decimals: rule.decimals, heads: [dog.worseWords, `left ${region}`, `right ${region}`],
    quantiles: QUANTILES.map(([p, words]) => ({ words, figures: groups.map((group) => ({ value: quantile(group, p).value, interval: quantileInterval(group, p) })) })),
    curve: cumulative(groups[0]!), years: parts.years.map(beside), trend: parts.trend && beside(parts.trend),
  };
}

const gradesOf = ({ grades }: GradeRule, counts: Record<string, number>, n: number): BreedPicture['grades'] =>
  grades.flatMap(({ code }, place) => (counts[place] ? [{ grade: code, n: counts[place], interval: wilson(counts[place], n) }] : []));
