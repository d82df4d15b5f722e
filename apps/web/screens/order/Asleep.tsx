import { Link } from '@tanstack/react-router';
import type { NextAction, OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { Button, buttonClass } from '../../design/Button.js';
import { plain, timeAt } from '../../design/format.js';
import { t } from '../../words/t.js';
import { actsBesideTheDog, ofWhat } from './next-actions.js';
import { Told } from '../../words/Told.js';

const READINGS_APART_MINUTES = 5;

/** Name, minutes asleep, when the next reading is due. No seconds, no red, no countdown: nothing here hurries a hand. */
export function Asleep({ screen, visit, onAct }: { screen: OrderScreen; visit: VisitView; onAct: (next: NextAction) => void }) {
  if (!visit.asleepSince) return null;
  const zone = screen.practice.zone;
  const last = visit.readings.at(-1)?.at ?? visit.asleepSince;
  const minutes = Math.max(0, Math.floor((Date.parse(screen.now) - Date.parse(visit.asleepSince)) / 60_000));
  const due = new Date(Date.parse(last) + READINGS_APART_MINUTES * 60_000).toISOString();
  return (
    <section className="sheet asleep" aria-label={t('Asleep')}>
      <div>
        <h2>{t('{dog} is asleep', { dog: screen.dog.callName || screen.dog.name })}</h2>
        <p className="small quiet">
          {visit.admitted && <span className="val">{t('{weight} kg today.', { weight: plain(visit.admitted.weightKg) })}</span>}
          {' '}
          {[visit.vet && t('Vet {name}', { name: visit.vet }), visit.nurse && t('nurse {name}', { name: visit.nurse })].filter(Boolean).join(', ')}
        </p>
        <div className="do-now">
          {actsBesideTheDog(screen).map((n) => (
            <Button key={n.action + n.on.id} size="tablet" kind={n.action === 'recordReading' ? 'ink' : 'plain'} onPress={() => onAct(n)}>
              {n.label}
              {ofWhat(screen, n) && `: ${ofWhat(screen, n)}`}
            </Button>
          ))}
          <Link to="/orders/$order/watch" params={{ order: screen.id }} className={buttonClass('plain', 'tablet')}>
            {t('Beside the dog')}
          </Link>
          {screen.next.some((n) => n.action === 'takeView' && n.yours) && (
            <Link to="/orders/$order/imaging" params={{ order: screen.id }} className={buttonClass('plain', 'tablet')}>
              {t('Imaging screen')}
            </Link>
          )}
        </div>
      </div>
      <div className="clock" role="timer" aria-label={t('Asleep for {minutes} minutes', { minutes })}>
        {t('{minutes} min', { minutes })}
        <small>
          <Told text={t('asleep since {time}. Next reading by **{due}**', { time: timeAt(visit.asleepSince, zone), due: timeAt(due, zone) })} />
        </small>
      </div>
    </section>
  );
}
