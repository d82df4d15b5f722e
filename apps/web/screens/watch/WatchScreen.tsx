import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { NextAction, OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { useOrder } from '../../api/board.js';
import { Button, buttonClass } from '../../design/Button.js';
import { Empty, Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { OnThisTablet } from '../../offline/OnThisTablet.js';
import { useAsIfStored } from '../../offline/use-as-if-stored.js';
import { t } from '../../words/t.js';
import { ActPanel } from '../order/ActPanel.js';
import { actsBesideTheDog, isAsleep, isBeingImaged } from '../order/next-actions.js';
import { StopBar } from '../order/StopBar.js';
import '../order/order.css';
import { ReadingPad } from './ReadingPad.js';
import { SoFar } from './SoFar.js';
import { WatchHead } from './WatchHead.js';
import './watch.css';

/** Everything that hands beside a sleeping dog need, on one tablet, and nothing else. */
export function WatchScreen() {
  const { order } = useParams({ from: '/inside/orders/$order/watch' });
  const { data, error } = useOrder(order);
  const screen = useAsIfStored(data);
  if (!screen) return error ? <NotShown title={t('Order')} error={error} /> : <Loading what={t('the order')} />;
  const visit = screen.visits.find(isAsleep);
  if (!visit)
    return (
      <Empty title={t('{dog} is not asleep', { dog: screen.dog.callName || screen.dog.name })}>
        {t('What there is to do next stands with the order.')}{' '}<Link to="/orders/$order" params={{ order }}>{t('Open the order')}</Link>
      </Empty>
    );
  return <Watch screen={screen} visit={visit} />;
}

function Watch({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const [doing, setDoing] = useState<NextAction | null>(null);
  const beside = actsBesideTheDog(screen);
  const reading = beside.find((n) => n.action === 'recordReading' && n.on.id === visit.id);
  return (
    <div className="watch">
      <WatchHead screen={screen} visit={visit} />
      <OnThisTablet screen={screen} />
      <div className="watch-two">
        <section aria-label={t('New reading')}>
          {reading ? <ReadingPad screen={screen} visit={visit} next={reading} /> : <p className="quiet">{t('Readings are taken by the nurse or the vet of this visit.')}</p>}
          <div className="do-now">
            {beside.filter((n) => n !== reading).map((n) => (
              <Button key={n.action + n.on.id} size="tablet" onPress={() => setDoing(n)}>
                {n.label}
              </Button>
            ))}
            <Link to="/orders/$order" params={{ order: screen.id }} className={buttonClass('plain', 'tablet')}>
              {t('The whole order')}
            </Link>
          </div>
          {doing && <ActPanel key={doing.action + doing.on.id} screen={screen} next={doing} onClose={() => setDoing(null)} />}
        </section>
        <SoFar visit={visit} zone={screen.practice.zone} />
      </div>
      {isBeingImaged(screen, visit) && <StopBar screen={screen} visit={visit} />}
    </div>
  );
}
