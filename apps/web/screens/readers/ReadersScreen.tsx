import { useQuery } from '@tanstack/react-query';
import type { SchemeTimes } from '#libs/contracts/readers';
import { get } from '../../api/client.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { momentAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { RetakesSheet } from './RetakesSheet.js';
import { ReturnedSheet } from './ReturnedSheet.js';
import { RoundSheet } from './RoundSheet.js';
import { TurnaroundSheet } from './TurnaroundSheet.js';
import '../scheme/scheme.css';

/** How long results take, what came back, and how well readers agree. */
export function ReadersScreen() {
  const { zone } = useMe();
  const { data: times, error } = useQuery({ queryKey: ['scheme', 'times'], queryFn: () => get<SchemeTimes>('/scheme/times') });
  if (!times) return error ? <ErrorBar error={error} /> : <Loading what={t('times and readings')} />;
  return (
    <>
      <div className="head">
        <h1>{t('Times and readers')}</h1>
        <p>{t('Counted {asOf}, over all practices and centres. Nobody is named or ranked.', { asOf: momentAt(times.asOf, zone) })}</p>
      </div>
      <div className="scheme reckoned">
        <TurnaroundSheet studies={times.studies} />
        <RetakesSheet retakes={times.retakes} />
        <ReturnedSheet returned={times.returned} />
        <RoundSheet />
      </div>
    </>
  );
}
