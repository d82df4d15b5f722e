import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { NextAction, OrderScreen as Screen } from '#libs/contracts/screens/order';
import { useOrder } from '../../api/board.js';
import { isSilence } from '../../api/failure.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar, NotShown } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { Strands } from '../../design/Strands.js';
import { OnThisTablet } from '../../offline/OnThisTablet.js';
import { useAsIfStored } from '../../offline/use-as-if-stored.js';
import { t } from '../../words/t.js';
import { ActPanel } from './ActPanel.js';
import { Asleep } from './Asleep.js';
import { isAsleep, isBeingImaged } from './next-actions.js';
import { FrozenRecord } from './frozen/FrozenRecord.js';
import './order.css';
import { Incidents } from './Incidents.js';
import { OrderHead } from './OrderHead.js';
import { Problems } from './Problems.js';
import { Arrived } from './record/Arrived.js';
import { Films } from './record/Films.js';
import { Happened } from './record/Happened.js';
import { Mails } from './record/Mails.js';
import { Papers } from './record/Papers.js';
import { Performed } from './record/Performed.js';
import { Results } from './record/Results.js';
import { Sending } from './record/Sending.js';
import { VisitRecord } from './record/VisitRecord.js';
import { StopBar } from './StopBar.js';
import { WaitsFor } from './WaitsFor.js';

export function OrderScreen() {
  const { order } = useParams({ from: '/inside/orders/$order' });
  const { data, error } = useOrder(order);
  const screen = useAsIfStored(data);
  const [doing, setDoing] = useState<NextAction | null>(null);
  if (!screen) return error ? <NotShown title={t('Order')} error={error} /> : <Loading what={t('the order')} />;
  const asleep = screen.visits.find(isAsleep);
  const imaged = screen.visits.find((v) => isBeingImaged(screen, v));
  const panel = doing && <ActPanel key={doing.action + doing.on.id} screen={screen} next={doing} onClose={() => setDoing(null)} />;
  const notFresh = (
    <>
      <OnThisTablet screen={screen} />
      <ErrorBar error={isSilence(error) ? null : error}>
        <p className="small">{t('Below is the order as it was last seen.')}</p>
      </ErrorBar>
    </>
  );
  // A dog that is asleep is watched on the page that everybody knows, whatever has happened.
  if (screen.calm && (screen.frozen || screen.silent) && !asleep && !imaged)
    return (
      <>
        {notFresh}
        <FrozenRecord screen={screen} calm={screen.calm} onAct={setDoing} panel={panel}>
          <Strands thread={screen.thread} zone={screen.practice.zone} />
          <RecordSheets screen={screen} />
          <HistorySheets screen={screen} />
        </FrozenRecord>
      </>
    );
  // Beside a death or harm there is no second ink: nothing on this page calls.
  return (
    <div className={screen.frozen || screen.silent ? 'calm' : undefined}>
      {notFresh}
      <OrderHead screen={screen} />
      <Problems screen={screen} />
      <Sheet title={t('Where it stands')}>
        <Strands thread={screen.thread} zone={screen.practice.zone} />
      </Sheet>
      {asleep && <Asleep screen={screen} visit={asleep} onAct={setDoing} />}
      {panel}
      <div className="cols two order-below">
        <div className="cols">
          <WaitsFor screen={screen} onAct={setDoing} />
          <RecordSheets screen={screen} />
        </div>
        <div className="cols">
          <HistorySheets screen={screen} />
        </div>
      </div>
      {imaged && <StopBar screen={screen} visit={imaged} />}
    </div>
  );
}

type Shown = { screen: Screen };

const RecordSheets = ({ screen }: Shown) => (
  <>
    <Results screen={screen} />
    <Incidents screen={screen} />
    {screen.visits.toReversed().map((v) => (
      <VisitRecord key={v.id} screen={screen} visit={v} />
    ))}
    <Arrived screen={screen} />
    <Performed screen={screen} />
    <Films screen={screen} />
    <Sending screen={screen} />
  </>
);

const HistorySheets = ({ screen }: Shown) => (
  <>
    <Papers screen={screen} />
    <Mails screen={screen} />
    <Happened screen={screen} />
  </>
);
