import type { BreedPicture } from '#libs/contracts/screens/breeds';
import type { Axis } from '../../design/chart/Chart.js';
import { fixed, list } from '../../design/format.js';
import { t } from '../../words/t.js';

export type Values = NonNullable<BreedPicture['values']>;
export type Year = Values['years'][number];
type Interval = { lower: number; upper: number };

/** "0.44", with the unit where there is one. */
export const written = (value: number, { decimals, unit }: Pick<Values, 'decimals' | 'unit'>) => `${fixed(value, decimals)}${unit && ` ${unit}`}`;

/** "0.41 to 0.46", or that nothing surer can be said. */
export const between = (interval: Interval | null, values: Pick<Values, 'decimals' | 'unit'>) => (interval ? t('{lower} to {upper}', { lower: fixed(interval.lower, values.decimals), upper: written(interval.upper, values) }) : t('too few dogs for an interval'));

/** A share as so many of every 20, the owner's denominator. */
export const of20 = (share: number) => fixed(20 * share, 1);

export const yearsOf = ({ from, to }: Pick<Year, 'from' | 'to'>) => (from === to ? String(from) : t('{from} to {to}', { from, to }));

/** Birth years side by side, as far apart as there are parts. */
export const yearTicks = (years: readonly Year[]): Axis => ({ from: -0.6, to: years.length - 0.4, label: t('birth year'), ticks: years.map(({ from, to }, i) => ({ at: i, words: from === to ? String(from) : `${from}–${String(to).slice(2)}` })) });

/** The share of those born that is in the set, of every 20, or why it cannot be told. */
export function screenedWords({ n, screened }: Pick<Year, 'n' | 'screened'>): string {
  if (screened.kind === 'known') return t('{share}, may be {lower} to {upper}', { share: of20(screened.share), lower: of20(screened.interval.lower), upper: of20(screened.interval.upper) });
  if (screened.kind === 'moreThanBorn') return t('more in the set ({n}) than born ({born})', { n, born: screened.born });
  const years = screened.years.length > 3 ? t('{count} of the years', { count: screened.years.length }) : list(screened.years.map(String));
  return t('not known, as the births of {years} are not written down', { years });
}
