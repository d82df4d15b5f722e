import { Chart } from '../../design/chart/Chart.js';
import { niceTicks } from '../../design/chart/ticks.js';
import { t } from '../../words/t.js';
import { of20, screenedWords, yearsOf, yearTicks, type Year } from './figures.js';
import { ScreenedNumbers } from './ScreenedNumbers.js';

/** Which share of those born is in the set: a picture of a quarter of a breed is not one of the breed. */
export function ScreenedChart({ years }: { years: Year[] }) {
  const ends = years.flatMap(({ screened }) => (screened.kind === 'known' ? [20 * screened.interval.upper] : []));
  const y = niceTicks(0, Math.max(...ends), 0, t('of every 20 born'));
  const says = t('Of every 20 pups born, in this set: {years}.', { years: years.map((year) => `${yearsOf(year)}: ${screenedWords(year)}`).join('; ') });
  return (
    <Chart title={t('Of every 20 pups born, in this set, by birth year')} says={says} x={yearTicks(years)} y={y} numbers={<ScreenedNumbers years={years} />}>
      {(at) => years.map(({ from, screened }, i) => (
        <g key={from}>
          {screened.kind === 'known' ? (
            <>
              <path className="edge" d={`M${at.x(i)} ${at.y(20 * screened.interval.lower)}V${at.y(20 * screened.interval.upper)}`} />
              <circle className="dot" cx={at.x(i)} cy={at.y(20 * screened.share)} r={5} />
              <text x={at.x(i) + 10} y={at.y(20 * screened.share) + 4}>{of20(screened.share)}</text>
            </>
          ) : (
            <text x={at.x(i)} y={at.y(0) - 8} textAnchor="middle">{screened.kind === 'notKnown' ? t('not known') : t('more than born')}</text>
          )}
        </g>
      ))}
    </Chart>
  );
}
