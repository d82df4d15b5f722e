import { Link, useParams } from '@tanstack/react-router';
import { useDayBoard, useOrder } from '../../api/board.js';
import { isSilence } from '../../api/failure.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar, NotShown } from '../../design/Notice.js';
import { OnThisTablet } from '../../offline/OnThisTablet.js';
import { useAsIfStored } from '../../offline/use-as-if-stored.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { isBeingImaged } from '../order/next-actions.js';
import '../order/marking/marking.css';
import '../order/order.css';
import './imaging.css';
import { nextDog } from './next-dog.js';
import { Room } from './Room.js';
import { useDarkRoom } from './use-dark-room.js';
import { HERE, Told } from '../../words/Told.js';

/** One dog in a dark room. */
export function ImagingScreen() {
  const { order } = useParams({ from: '/inside/orders/$order/imaging' });
  const { data, error } = useOrder(order);
  const board = useDayBoard(undefined).data;
  const screen = useAsIfStored(data);
  const me = useMe();
  const room = useDarkRoom();
  if (!screen) return error ? <NotShown title={t('Imaging')} error={error} /> : <Loading what={t('the order')} />;
  const visit = screen.visits.find((v) => isBeingImaged(screen, v)) ?? screen.visits.at(-1);
  if (!visit)
    return (
      <div className="imaging-none">
        <h1>{t('{dog} has no visit', { dog: screen.dog.callName || screen.dog.name })}</h1>
        <p>
          <Told text={t('Pictures are taken in a visit. {link} says what comes next.', { link: HERE })} here={<Link to="/orders/$order" params={{ order }}>{t('The order')}</Link>} />
        </p>
      </div>
    );
  return (
    <div className={screen.frozen || screen.silent ? 'imaging calm' : 'imaging'}>
      <div className="imaging-above">
        <OnThisTablet screen={screen} />
        <ErrorBar error={isSilence(error) ? null : error}>
          <p className="small">{t('Below is the order as it was last seen.')}</p>
        </ErrorBar>
      </div>
      <Room key={screen.id} screen={screen} visit={visit} after={nextDog(board, me.name, screen.id)} room={room} />
    </div>
  );
}
