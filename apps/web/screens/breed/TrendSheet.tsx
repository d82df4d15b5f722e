import { Chart } from '../../design/chart/Chart.js';
import { niceTicks } from '../../design/chart/ticks.js';
import { fixed, list } from '../../design/format.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';
import { ScreenedChart } from './ScreenedChart.js';
import { ScreenedNumbers } from './ScreenedNumbers.js';
import { between, screenedWords, written, yearsOf, yearTicks, type Values } from './figures.js';
import { Told } from '../../words/Told.js';

/** The middle of each birth year, at one age, and whether a line through them says anything. */
export function TrendSheet({ values }: { values: Values }) {
  return (
    <Sheet title={t('From one birth year to the next')}>
      <p className="said">{sentence(values)}</p>
      {values.trend && <p>{t('Born {years}, in this set of every 20 pups born: {share}.', { years: yearsOf(values.trend), share: screenedWords(values.trend) })}</p>}
      <p className="small quiet after">{t('All at one age. It tells of the dogs whose films were sent: a line falls when the dogs change, and also when other dogs are sent.')}</p>
      {values.years.length > 0 ? (
        <>
          <h3 className="after">{t('The middle of each birth year')}</h3>
          <YearsChart values={values} />
          <Screened values={values} />
        </>
      ) : (
        <p>{t('There are too few dogs to show birth years apart, or beside how many were born.')}</p>
      )}
    </Sheet>
  );
}

/** What the years are worth: how many of those born they tell of. */
function Screened({ values }: { values: Values }) {
  const { years } = values;
  const more = years.filter(({ screened }) => screened.kind === 'moreThanBorn');
  if (years.every(({ screened }) => screened.kind === 'notKnown')) return <p>{t('Which share of those born these are is not known: nobody has written down how many pups were born.')}</p>;
  return (
    <>
      <h3 className="after">{t('Of every 20 pups born, in this set')}</h3>
      {more.length > 0 && <p><Told text={t('**More dogs are in the set than are said to have been born** ({years}). Dogs born in another country may be among them, or the number of births is too low. No share can be told from it.', { years: list(more.map(yearsOf)) })} /></p>}
      {years.some(({ screened }) => screened.kind === 'known') ? <ScreenedChart years={years} /> : <ScreenedNumbers years={years} />}
      <p className="small quiet">{t('Those in this set, read at this age and with their owners’ yes, of the pups born in the scheme’s country. Dogs X-rayed at another age or never sent are not among them, dogs born elsewhere may be. The interval is of years like these; it does not know of a wrong number of births.')}</p>
    </>
  );
}

function sentence({ trend, name, decimals }: Values): string {
  if (!trend) return t('Too few dogs or years for a trend: it takes 60 dogs of four birth years.');
  const { perYear, interval: { lower, upper } } = trend;
  const figure = (x: number) => (x < 0 ? t('minus {number}', { number: fixed(-x, decimals + 2) }) : fixed(x, decimals + 2));
  const range = t('may be {lower} to {upper} a year, {n} dogs born {from} to {to}', { lower: figure(lower), upper: figure(upper), n: trend.n, from: trend.from, to: trend.to });
  if (lower <= 0 && upper >= 0) return t('No change of the {value} can be told: {perYear} a year, {range}.', { value: name, perYear: figure(perYear), range });
  return t('The {value} {way, select, down {falls} other {rises}} by {perYear} a year ({range}).', { value: name, way: perYear < 0 ? 'down' : 'up', perYear: figure(Math.abs(perYear)), range });
}

function YearsChart({ values }: { values: Values }) {
  const { years, decimals, name } = values;
  const ends = years.flatMap((year) => [year.median, ...(year.interval ? [year.interval.lower, year.interval.upper] : [])]);
  const y = niceTicks(Math.min(...ends), Math.max(...ends), decimals, name);
  const says = t('Median {value} by birth year: {years}.', { value: name, years: years.map((year) => `${yearsOf(year)}: ${written(year.median, values)}, ${between(year.interval, values)}`).join('; ') });
  return (
    <Chart title={t('Median {value} by birth year', { value: name })} says={says} x={yearTicks(years)} y={y} numbers={<Medians values={values} />}>
      {(at) => years.map((year, i) => (
        <g key={year.from}>
          {year.interval && <path className="edge" d={`M${at.x(i)} ${at.y(year.interval.lower)}V${at.y(year.interval.upper)}`} />}
          <circle className="dot" cx={at.x(i)} cy={at.y(year.median)} r={5} />
        </g>
      ))}
    </Chart>
  );
}

function Medians({ values }: { values: Values }) {
  return (
    <Table
      caption={t('Median by birth year')}
      rows={values.years}
      rowKey={(year) => String(year.from)}
      columns={[
        { head: t('Born'), rowHead: true, cell: yearsOf },
        { head: t('Dogs'), right: true, cell: (year) => year.n },
        { head: t('Median'), right: true, cell: (year) => written(year.median, values) },
        { head: t('Interval'), cell: (year) => between(year.interval, values) },
      ]}
    />
  );
}
