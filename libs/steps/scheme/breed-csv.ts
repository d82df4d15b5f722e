import { csv } from '#libs/contracts/csv';
import type { BreedPicture } from '#libs/contracts/screens/breeds';
import { FEWEST } from '#libs/science/population/group-size';
import type { StepDeps } from '../record/step-deps.js';
import { breedPicture } from './breed-picture.js';
import type { Lead } from './scheme-screen.js';

type Row = (string | number | null)[];
type Interval = { lower: number; upper: number } | null;

const HEAD = ['What', 'Of', 'Dogs', 'Figure', 'From', 'To'];

/** A frozen set for a spreadsheet. Made of what the page shows and of nothing else, so that what is hidden there is hidden here. */
export async function breedCsv(deps: StepDeps, lead: Lead, set: string): Promise<{ name: string; text: string }> {
  const breed = await breedPicture(deps, lead, set);
  const name = [breed.breed, breed.frozenOn].join(' ').toLowerCase().normalize('NFKD').replace(/[^a-z0-9]+/g, '-');
  return { name: `${name}.csv`, text: csv(HEAD, [...aboutSet(breed), ...values(breed), ...grades(breed), ...births(breed)]) };
}

const row = (what: string, of: string | number, dogs: number | null, figure: string | number | null = null, interval: Interval = null): Row => [what, of, dogs, figure, interval?.lower ?? null, interval?.upper ?? null];

function aboutSet({ breed, study, age, frozenOn, fromYear, toYear, n, unsent, sent, senders }: BreedPicture): Row[] {
  return [
    row('set', `${breed}, ${study}, X-rayed ${age}, ${fromYear} to ${toYear}, counted on ${frozenOn}`, n),
    unsent === null || !sent ? row('X-rayed, never sent', `fewer than ${FEWEST.toSayAnything}`, null) : row('X-rayed, never sent', '', unsent),
    ...(sent ? [row('share of those X-rayed that is in the set', '', null, sent.share, sent.interval)] : []),
    ...(senders ? [row('came with its whole litter', '', senders.litter), row('chosen by somebody', '', senders.chosen)] : [row('who sent the films', 'not shown: one of the groups is so small that it could be told', null)]),
  ];
}

function values({ values: shown, grades: byGrade, n }: BreedPicture): Row[] {
  if (!shown) return byGrade ? [] : [row('values', `not shown for ${n} dogs, fewer than ${FEWEST.forAPlace}`, null)];
  const { heads, quantiles, curve, years, trend, decimals, name, unit } = shown;
  return [
    ...quantiles.flatMap(({ words, figures }) => figures.map(({ value, interval }, i) => row(`${name}${unit && ` in ${unit}`}: ${words}`, heads[i]!, null, Number(value.toFixed(decimals + 1)), interval))),
    ...curve.map(({ value, share, lower, upper }, i) => [`at ${name}, and share at or below it`, value, Math.round(n * (share - (curve[i - 1]?.share ?? 0))), share, lower, upper]),
    ...years.map((year) => row(`median ${name}, by birth year`, yearsOf(year), year.n, year.median, year.interval)),
    ...years.map((year) => screened(year)),
    ...(trend ? [row(`change of ${name} a year, by birth year`, yearsOf(trend), trend.n, trend.perYear, trend.interval), screened(trend)] : []),
  ];
}

const yearsOf = ({ from, to }: { from: number; to: number }) => (from === to ? String(from) : `${from} to ${to}`);

type Beside = NonNullable<BreedPicture['values']>['years'][number]['screened'];

function screened({ screened: told, n, ...part }: { from: number; to: number; n: number; screened: Beside }): Row {
  const what = 'share of those born that is in the set';
  if (told.kind === 'known') return row(what, yearsOf(part), n, told.share, told.interval);
  return row(what, yearsOf(part), n, told.kind === 'moreThanBorn' ? `more than the ${told.born} born` : `not known: births of ${told.years.join(', ')}`);
}

const grades = ({ grades: shown, n }: BreedPicture): Row[] => (shown ?? []).map(({ grade, n: dogs, interval }) => row('grade', grade, dogs, dogs / n, interval));

const births = ({ births: said }: BreedPicture): Row[] => said.map(({ year, born, source }) => row('pups born, as written down', year, null, born ?? `taken back: ${source}`));
