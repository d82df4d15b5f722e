import { useMutation, useQuery } from '@tanstack/react-query';
import type { Choosing, ChoosingAsked, ChoosingSet } from '#libs/contracts/choosing';
import { get, post } from '../../api/client.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { ChoosingForm } from './ChoosingForm.js';
import { Cost } from './Cost.js';
import { Effect } from './Effect.js';
import '../scheme/scheme.css';
import './choosing.css';

/** What breeding from a share of a breed would do, and what it costs in animals. Reckoned, never stored. */
export function ChoosingScreen() {
  const { data: sets, error } = useQuery({ queryKey: ['scheme', 'choosing'], queryFn: () => get<ChoosingSet[]>('/scheme/choosing') });
  const reckon = useMutation({ mutationFn: (body: ChoosingAsked) => post<Choosing>('/scheme/choosing', body) });
  if (!sets) return error ? <ErrorBar error={error} /> : <Loading what={t('the frozen sets')} />;
  return (
    <>
      <div className="head">
        <h1>{t('Choosing a share to breed from')}</h1>
        <p>{t('Reckoned from a frozen set: counts, no dogs. Nothing here is stored, and no dog is chosen by it.')}</p>
      </div>
      <div className="scheme reckoned">
        <Sheet title={t('The breed and the share')}>
          {sets.length === 0 ? (
            <Empty title={t('No set is frozen yet')}>{t('As soon as at least five dogs of a breed have been read, the next freeze makes a set of it.')}</Empty>
          ) : (
            <ChoosingForm sets={sets} reckon={reckon} />
          )}
        </Sheet>
        {reckon.data && (
          <div className="scheme" aria-live="polite">
            <Cost found={reckon.data} asked={reckon.variables!} />
            <Effect found={reckon.data} />
          </div>
        )}
      </div>
    </>
  );
}
