import type { SchemeTimes } from '#libs/contracts/readers';
import type { Axis } from '../../design/chart/Chart.js';
import { niceTicks } from '../../design/chart/ticks.js';
import type { Column } from '../../design/Table.js';
import { t } from '../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

export type Share = NonNullable<SchemeTimes['returned']>['practices'][number];

export const of100 = (share: number) => Math.round(100 * share);
const beyond = { above: 'more than chance', below: 'fewer than chance: ask too' } as const satisfies Record<string, PageSentence>;
export const beyondWords = (how: keyof typeof beyond) => t(beyond[how]);

/** The share that came back, and where it lies beyond chance, for whoever does not see the drawing. */
export const backWords = ({ cases, of, beyond: how }: Share) => (how ? t('{cases} of {of} sent back, {beyond}', { cases, of, beyond: beyondWords(how) }) : t('{cases} of {of} sent back', { cases, of }));

export const shareAxis = (points: Share[]): Axis => niceTicks(0, Math.max(5, ...points.flatMap((p) => [110 * p.share, 100 * p.limits.upper])), 0, t('of 100'));

export const shareColumns = (): Column<Share>[] => [
  { head: t('Sent back'), right: true, cell: (p) => p.cases },
  { head: t('Chance alone: of 100'), cell: (p) => t('{lower} to {upper}', { lower: of100(p.limits.lower), upper: of100(p.limits.upper) }) },
  { head: t('Beyond chance'), cell: (p) => (p.beyond ? <b>{beyondWords(p.beyond)}</b> : t('no')) },
];

/** A disc in the limits of chance for its size; open and named where it lies beyond them. */
export function Within({ point, x, y }: { point: Share; x: number; y: (of100: number) => number }) {
  return (
    <g>
      <path className="limit" d={`M${x - 5} ${y(100 * point.limits.upper)}h10m-5 0V${y(100 * point.limits.lower)}m-5 0h10`} />
      <circle className={`dot ${point.beyond ? 'open' : ''}`} cx={x} cy={y(100 * point.share)} r={5} />
      {point.beyond && <text className="words" x={x + (x > 280 ? -12 : 12)} y={y(100 * point.share) - 6} textAnchor={x > 280 ? 'end' : 'start'}>{beyondWords(point.beyond)}</text>}
    </g>
  );
}
