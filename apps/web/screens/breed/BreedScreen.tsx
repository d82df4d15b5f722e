import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import type { BreedPicture } from '#libs/contracts/screens/breeds';
import { get } from '../../api/client.js';
import { Loading } from '../../design/Empty.js';
import { Download } from '../../design/Download.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { fullDay, whole } from '../../design/format.js';
import { t } from '../../words/t.js';
import { BirthsSheet } from './BirthsSheet.js';
import { CurveChart } from './CurveChart.js';
import { Grades } from './Grades.js';
import { Quantiles } from './Quantiles.js';
import { TrendSheet } from './TrendSheet.js';
import { WhoIsMissing } from './WhoIsMissing.js';
import '../scheme/scheme.css';
import './breed.css';
import { Told } from '../../words/Told.js';

/** One breed on one day: how it lies, how sure that is, and who is missing from it. */
export function BreedScreen() {
  const { set } = useParams({ strict: false }) as { set: string };
  const { data: breed, error } = useQuery({ queryKey: ['scheme', 'breeds', set], queryFn: () => get<BreedPicture>(`/scheme/breeds/${set}`) });
  if (!breed) return error ? <ErrorBar error={error}><p><Link to="/scheme/breeds">{t('The sets in force')}</Link></p></ErrorBar> : <Loading what={t('the breed')} />;
  const years = breed.fromYear === breed.toYear ? t('in {year}', { year: breed.fromYear }) : t('from {first} to {last}', { first: breed.fromYear, last: breed.toYear });
  return (
    <>
      <div className="head">
        <h1>{breed.breed}</h1>
        <p>{t('{study}. {dogs} dogs, X-rayed {age}, {years}. Counted on {day}; not changed since.', { study: breed.study, dogs: whole(breed.n), age: breed.age, years, day: fullDay(breed.frozenOn) })}</p>
      </div>
      <nav className="more" aria-label={t('More of the scheme')}>
        <Link to="/scheme/breeds">{t('All breeds')}</Link>
        <Download path={`/scheme/breeds/${breed.id}/counts.csv`}>{t('The counts of this set, for a spreadsheet')}</Download>
      </nav>
      <div className="scheme">
        <WhoIsMissing breed={breed} />
        {!breed.values && !breed.grades && (
          <Sheet title={t('How the breed lies')}>
            <p><Told text={t('**Not shown for {n} dogs.** A picture of fewer than twenty would mislead. It is drawn from twenty dogs on.', { n: breed.n })} /></p>
          </Sheet>
        )}
        {breed.warning && (breed.values || breed.grades) && <p className="said">{t('These are fewer than 120 dogs, so every figure below may still change a lot.')}</p>}
        {breed.values && (
          <>
            <Sheet title={t('How the breed lies')}>
              <Quantiles values={breed.values} />
              <CurveChart values={breed.values} n={breed.n} />
            </Sheet>
            <TrendSheet values={breed.values} />
          </>
        )}
        {breed.grades && <Grades grades={breed.grades} n={breed.n} />}
        <BirthsSheet breed={breed} />
      </div>
    </>
  );
}
