import type { Choosing } from '#libs/contracts/choosing';
import { Sheet } from '../../design/Sheet.js';
import { fixed, fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import { MeansChart } from './MeansChart.js';
import { Told } from '../../words/Told.js';

/** What the share would do, as a range over the published heritabilities. */
export function Effect({ found }: { found: Choosing }) {
  const { set, measure, decimals, unit, mean, sd, rows, byGrade } = found;
  const written = (value: number) => `${fixed(value, decimals)}${unit && ` ${unit}`}`;
  const next = rows.flatMap(({ means }) => means.slice(0, 1));
  return (
    <Sheet title={t('What it would do')} beside={t('{breed}, {age}, frozen {day}', { breed: set.breed, age: set.age, day: fullDay(set.frozenOn) })}>
      {found.warning && <p className="why">{t('Only {n} dogs, fewer than 120: mean and spread may still change much.', { n: set.n })}</p>}
      {next.length > 0 && (
        <p className="said">
          <Told strong="val" text={t('The mean {measure} of the next generation would lie somewhere between **{higher}** and **{lower}**. Now it is **{now}**. How much of it is inherited in your own population is not known: yours may lie outside all of these.', { measure, higher: written(Math.max(...next)), lower: written(Math.min(...next)), now: written(mean) })} />
        </p>
      )}
      <MeansChart found={found} written={written} />
      <p className="small">
        {t('From {n} dogs, with a spread (standard deviation) of {sd}.', { n: set.n, sd: written(sd) })}{' '}<Missing found={found} />{' '}{t('Reckoned with the breeder’s equation for so many animals, each generation chosen alike, the inherited spread falling as it is used up. It leaves out everything else that is bred for, inbreeding, and films that are never sent, so it is the most that choosing by this value alone could do. A lower mean is a tighter breed; it does not say how many dogs will become lame.')}
      </p>
      {byGrade.length > 0 && (
        <p className="small">
          {t('Choosing by the grade of the extended view instead would move this value by only a part of that:')}{' '}{byGrade.map((g, i) => <span key={g.population}>{i > 0 && ', '}<Told strong="val" text={t('**{share} of 100** in {population}', { share: Math.round(100 * g.part), population: g.population })} /> <span className="quiet">({g.source})</span></span>)}.
        </p>
      )}
    </Sheet>
  );
}

function Missing({ found: { unsent, senders } }: { found: Choosing }) {
  return (
    <>
      {senders && `${t('{litter} of them came with their whole litter; of the others somebody chose which dog to X-ray.', { litter: senders.litter })} `}
      {unsent !== null && t('{unsent} more were X-rayed and their films never sent, so the breed may be looser than this set.', { unsent })}
    </>
  );
}
