import type { Round } from '#libs/contracts/readers';
import { Chart } from '../../design/chart/Chart.js';
import { niceTicks } from '../../design/chart/ticks.js';
import { Told } from '../../words/Told.js';
import { Table } from '../../design/Table.js';
import { fixed } from '../../design/format.js';
import { t } from '../../words/t.js';

type Measured = Extract<Round, { kind: 'measured' }>;
type Found = Measured['agreement'];

const correlation = (found: Found) => (found?.value == null ? t('cannot be said') : fixed(found.value, 2));
const range = (found: Found) => (found?.mayBe ? t('{lower} to {upper}', { lower: fixed(found.mayBe.lower, 2), upper: fixed(found.mayBe.upper, 2) }) : t('no interval'));

export function Measured({ round }: { round: Measured }) {
  const { films, readers, within, decimals, unit, pair } = round;
  const written = (value: number) => `${fixed(value, decimals)}${unit && ` ${unit}`}`;
  const rows = [
    { what: t('Agreement: one reader for another'), found: round.agreement },
    { what: t('Consistency: a reader who always reads higher does no harm'), found: round.consistency },
    { what: t('One reading of any reader, readers not told apart'), found: round.oneReader },
    { what: t('Agreement of the mean of these {readers} readers', { readers }), found: round.meanOfReaders },
  ];
  return (
    <>
      <p className="said">
        <Told strong="val" text={t('Two readings of one film differ by less than **{value}** in 95 of 100 pairs.', { value: written(within.smallestRealChange) })} />
      </p>
      <p>
        {t('{films} films, {readers} readers. Within one film the readings have a standard deviation of {sd} ({lower} to {upper}).', { films, readers, sd: fixed(within.sd, decimals + 1), lower: fixed(within.mayBe.lower, decimals + 1), upper: fixed(within.mayBe.upper, decimals + 1) })}{films < 30 && ` ${t('With fewer than 30 films all this is wide.')}`}
      </p>
      <Table
        caption={t('Intraclass correlations')}
        rows={rows}
        rowKey={(row) => row.what}
        columns={[
          { head: t('Intraclass correlation'), rowHead: true, cell: (row) => row.what },
          { head: t('Found'), right: true, cell: (row) => correlation(row.found) },
          { head: t('95 % interval'), cell: (row) => range(row.found) },
        ]}
      />
      <p className="small quiet">{t('Shrout and Fleiss, Psychol Bull 1979;86:420-428. A correlation is high as soon as the films differ much: it is no agreement by itself.')}</p>
      {pair && <Pairs pair={pair} measure={round.measure} written={written} decimals={decimals} />}
    </>
  );
}

function Pairs({ pair, measure, written, decimals }: { pair: NonNullable<Measured['pair']>; measure: string; written: (value: number) => string; decimals: number }) {
  const limits = [{ what: t('Upper limit'), of: pair.upper }, { what: t('Mean difference'), of: pair.difference }, { what: t('Lower limit'), of: pair.lower }];
  const far = Math.max(10 ** -decimals, ...limits.flatMap((l) => [Math.abs(l.of.mayBe!.lower), Math.abs(l.of.mayBe!.upper)]), ...pair.points.map((p) => Math.abs(p.difference)));
  const means = pair.points.map((p) => p.mean);
  const says = t('{parts}. {count} films.', { parts: limits.map((l) => t('{what} {value}, may be {lower} to {upper}', { what: l.what, value: written(l.of.value!), lower: written(l.of.mayBe!.lower), upper: written(l.of.mayBe!.upper) })).join('. '), count: pair.points.length });
  return (
    <Chart
      title={t('First reader less second reader, film by film')}
      says={says}
      x={niceTicks(Math.min(...means) - 10 ** -decimals, Math.max(...means) + 10 ** -decimals, decimals, t('mean of both, {measure}', { measure }))}
      y={niceTicks(-far, far, decimals, t('difference'))}
      numbers={
        <Table
          caption={t('Limits of agreement')}
          rows={limits}
          rowKey={(l) => l.what}
          columns={[
            { head: t('First less second'), rowHead: true, cell: (l) => l.what },
            { head: t('Found'), right: true, cell: (l) => written(l.of.value!) },
            { head: t('95 % interval'), cell: (l) => t('{lower} to {upper}', { lower: written(l.of.mayBe!.lower), upper: written(l.of.mayBe!.upper) }) },
          ]}
        />
      }
    >
      {(at) => (
        <>
          {limits.map((l, i) => (
            <g key={l.what}>
              <path className="edge" d={`M48 ${at.y(l.of.value!)}H516`} />
              <path className="limit" d={`M${483 + 11 * i} ${at.y(l.of.mayBe!.upper)}h10m-5 0V${at.y(l.of.mayBe!.lower)}m-5 0h10`} />
              <text className="words" x={474} y={at.y(l.of.value!) - 4} textAnchor="end">{written(l.of.value!)}</text>
            </g>
          ))}
          {pair.points.map((p, i) => <circle key={i} className="dot" cx={at.x(p.mean)} cy={at.y(p.difference)} r={3.5} />)}
        </>
      )}
    </Chart>
  );
}
