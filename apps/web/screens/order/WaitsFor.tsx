import type { NextAction, OrderScreen } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { Hold, HoldList } from '../../design/Hold.js';
import { Sheet } from '../../design/Sheet.js';
import { capital, inside, list } from '../../design/format.js';
import { t } from '../../words/t.js';
import { actsBesideTheDog, goesOn, holdsWithWays, isAsleep, labelOf, ofWhat, sortActions } from './next-actions.js';

type Props = { screen: OrderScreen; onAct: (next: NextAction) => void; title?: string };

/** The holds, each with the way out that this person has; one elder button, for the first of them. */
export function WaitsFor({ screen, onAct, title = t('What it waits for') }: Props) {
  const ways = holdsWithWays(screen);
  const calm = screen.frozen || screen.silent;
  const firstWithWay = ways.findIndex((w) => w.ways.some(goesOn));
  const { now, also, others } = sortActions(screen, [...ways.flatMap((w) => w.ways), ...(screen.visits.some(isAsleep) ? actsBesideTheDog(screen) : [])]);
  return (
    <Sheet title={title}>
      {screen.holds.length === 0 && <p>{t('Nothing is missing.')}{' '}{now.length === 0 && t('Nobody is waited for now.')}</p>}
      {ways.length > 0 && <HoldList>
        {ways.map(({ hold, ways: outs }, i) => (
          <Hold key={`${hold.code}${hold.on.id}${i}`} title={hold.title} rest={hold.rest} who={capital(list(hold.who))}>
            {outs.length > 0 && (
              <span className="acts">
                {outs.map((n, j) => (
                  <Button key={n.action + n.on.id} kind={i === firstWithWay && j === 0 && !calm ? 'elder' : 'plain'} onPress={() => onAct(n)}>
                    {labelOf(screen, n)}
                  </Button>
                ))}
              </span>
            )}
          </Hold>
        ))}
      </HoldList>}
      {now.length > 0 && (
        <div className="do-now">
          {now.map((n, i) => (
            <ActButton key={n.action + n.on.id} next={n} screen={screen} onAct={onAct} kind={i === 0 && firstWithWay < 0 && !calm ? 'ink' : 'plain'} />
          ))}
        </div>
      )}
      {others.length > 0 && <p className="small quiet">{t('Others do next: {actions}.', { actions: list([...new Set(others.map((n) => inside(n.label)))]) })}</p>}
      {also.length > 0 && (
        <p className="also">
          <span>{t('Also possible:')}</span>
          {also.map((n) => (
            <ActButton key={n.action + n.on.id} next={n} screen={screen} onAct={onAct} kind="text" />
          ))}
        </p>
      )}
    </Sheet>
  );
}

function ActButton({ next, screen, onAct, kind }: { next: NextAction; screen: OrderScreen; onAct: Props['onAct']; kind: 'ink' | 'plain' | 'text' }) {
  const which = ofWhat(screen, next);
  return (
    <Button kind={kind} onPress={() => onAct(next)}>
      {labelOf(screen, next)}
      {which && `: ${which}`}
    </Button>
  );
}
