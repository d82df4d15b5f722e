import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { plain, timeAt } from '../../design/format.js';
import { t } from '../../words/t.js';
import { useMinute } from './use-minute.js';
import { Told } from '../../words/Told.js';

const READINGS_APART_MS = 5 * 60_000;

/** Name, minutes asleep, when the next reading is due. No seconds, no red, no countdown: nothing here hurries a hand. */
export function WatchHead({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const now = useMinute(screen.id, screen.now);
  const { zone } = screen.practice;
  const since = visit.asleepSince!;
  const minutes = Math.max(0, Math.floor((Date.parse(now) - Date.parse(since)) / 60_000));
  const due = Date.parse(visit.readings.at(-1)?.at ?? since) + READINGS_APART_MS;
  const isDue = Date.parse(now) >= due;
  const at = timeAt(new Date(due).toISOString(), zone);
  return (
    <header className="watch-head">
      <div>
        <h1>{screen.dog.callName || screen.dog.name}</h1>
        <p className="small quiet">
          {[screen.dog.breed, visit.admitted && t('{weight} kg today', { weight: plain(visit.admitted.weightKg) }), visit.vet && t('vet {name}', { name: visit.vet }), visit.nurse && t('nurse {name}', { name: visit.nurse })].filter(Boolean).join(', ')}. {t('Order {order}', { order: screen.accession })}
        </p>
      </div>
      <div className="clock" role="timer" aria-label={t('Asleep for {minutes} minutes', { minutes })}>
        {t('{minutes} min', { minutes })}
        <small>{t('asleep since {time}', { time: timeAt(since, zone) })}</small>
      </div>
      <p className="watch-due" role="status">
        {isDue ? <b>{t('A reading is due, since {time}.', { time: at })}</b> : <Told text={t('Next reading by **{time}**.', { time: at })} />}
      </p>
    </header>
  );
}
