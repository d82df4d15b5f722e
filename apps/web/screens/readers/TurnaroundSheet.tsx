import type { SchemeTimes } from '#libs/contracts/readers';
import { Chart, stepPath, type Axis } from '../../design/chart/Chart.js';
import { countTicks, of100Ticks } from '../../design/chart/ticks.js';
import { Empty } from '../../design/Empty.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';

type Study = SchemeTimes['studies'][number];
type Curve = NonNullable<Study['curve']>;
type Step = Curve['steps'][number];

const of100 = (share: number) => Math.round(100 * share);

/** With the open studies in: a mean of the answered ones alone looks quick as long as the slow ones are not done. */
export function TurnaroundSheet({ studies }: { studies: Study[] }) {
  return (
    <Sheet title={t('How long a result takes')} beside={t('studies first sent in the last three years')}>
      {studies.length === 0 && <Empty title={t('Nothing has been sent yet')}>{t('As soon as films go to a reading centre, the days until their result are counted here.')}</Empty>}
      {studies.map(({ study, curve }) => (
        <section key={study}>
          <h3>{study}</h3>
          {curve ? <OneStudy study={study} curve={curve} /> : <p>{t('Fewer than five studies have been sent: too few to say anything.')}</p>}
        </section>
      ))}
    </Sheet>
  );
}

function OneStudy({ study, curve }: { study: string; curve: Curve }) {
  const last = Math.max(1, ...curve.steps.map((s) => s.day), ...curve.openAt);
  const x: Axis = { ...countTicks(last), label: t('days since sending') };
  const y: Axis = { ...of100Ticks, label: t('of 100') };
  const { time, lower, upper } = curve.half;
  const half = time === null ? t('Not yet half of them have a result.') : halfWords(time, lower ?? time, upper);
  const says = t('Of 100 studies sent, so many have a result. {days}. {half}', { days: curve.steps.map((s) => t('Day {day}: {share}', { day: s.day, share: of100(1 - s.open) })).join('; '), half });
  return (
    <>
      <p>
        <b>{half}</b>{' '}{t('{n, plural, one {# study} other {# studies}} sent, of which {open, plural, one {# has no result and is counted for as long as it has} other {# have no result and are counted for as long as they have}} waited.', { n: curve.n, open: curve.stillOpen })}{curve.n < 20 && ` ${t('So few say little.')}`}
      </p>
      <Chart title={t('{study}: of 100 studies sent, how many have a result, by day', { study })} says={says} x={x} y={y} numbers={<Numbers study={study} steps={curve.steps} />}>
        {(at) => {
          const start = { x: at.x(0), y: at.y(0) };
          const line = (share: (s: Step) => number) => [start, ...curve.steps.map((s) => ({ x: at.x(s.day), y: at.y(1 - share(s)) }))];
          const end = at.x(last);
          const edges = [line((s) => s.mayBe?.upper ?? s.open), line((s) => s.mayBe?.lower ?? s.open)].map((points) => stepPath(points, end));
          return (
            <>
              <path className="band" d={`${edges[0]}${reversed(line((s) => s.mayBe?.lower ?? s.open), end)}Z`} />
              <path className="line" d={stepPath(line((s) => s.open), end)} />
              {[...new Set(curve.openAt)].map((day) => {
                const open = curve.steps.findLast((s) => s.day <= day)?.open ?? 1;
                return <path key={day} className="tick" d={`M${at.x(day)} ${at.y(1 - open) - 7}v14`} />;
              })}
            </>
          );
        }}
      </Chart>
      <p className="small quiet">{t('The band is the 95 % interval (Kaplan and Meier’s curve, Greenwood’s error); ticks are studies still open. Films that were sent back go on counting from their first sending.')}</p>
    </>
  );
}

function halfWords(day: number, lower: number, upper: number | null): string {
  if (upper === null) return t('Half have a result by day {day}; that day may be {lower} or any later one.', { day, lower });
  return lower === upper ? t('Half have a result by day {day}.', { day }) : t('Half have a result by day {day}; that day may be any from {lower} to {upper}.', { day, lower, upper });
}

/** The same steps from their end back to their start, to close the band. */
function reversed(points: { x: number; y: number }[], end: number): string {
  const back = [...points].reverse();
  return `V${back[0]!.y}L${end} ${back[0]!.y}${back.map(({ x }, i) => `H${x}V${back[i + 1]?.y ?? points[0]!.y}`).join('')}`;
}

function Numbers({ study, steps }: { study: string; steps: Step[] }) {
  return (
    <Table
      caption={t('{study}: results by day since sending', { study })}
      rows={steps}
      rowKey={(s) => String(s.day)}
      columns={[
        { head: t('Day'), rowHead: true, cell: (s) => s.day },
        { head: t('Of 100 have a result'), right: true, cell: (s) => of100(1 - s.open) },
        { head: t('May be'), cell: (s) => (s.mayBe ? t('{lower} to {upper}', { lower: of100(1 - s.mayBe.upper), upper: of100(1 - s.mayBe.lower) }) : t('all have')) },
      ]}
    />
  );
}
