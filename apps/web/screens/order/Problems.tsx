import type { OrderScreen } from '#libs/contracts/screens/order';
import { useOrderErrand } from '../../api/act.js';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { momentAt } from '../../design/format.js';
import { t } from '../../words/t.js';

/** What the program could not do by itself, in words, until a person has had it tried again. */
export function Problems({ screen }: { screen: OrderScreen }) {
  const errand = useOrderErrand(screen.id);
  if (screen.problems.length === 0) return null;
  return (
    <ul className="stack problems">
      {screen.problems.map((p) => (
        <li key={p.id} className="err">
          <b>{p.words}</b> <span className="small quiet">{momentAt(p.at, screen.practice.zone)}</span>
          <div className="acts">
            <Button onPress={() => errand.mutate({ path: `/problems/${p.id}/retry` })}>{t('Retry')}</Button>
          </div>
        </li>
      ))}
      <ErrorBar error={errand.error} />
    </ul>
  );
}
