import type { NextAction, OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { timeAt } from '../../design/format.js';
import { actsBesideTheDog, ofWhat } from './next-actions.js';

const READINGS_APART_MINUTES = 5;

/** Name, minutes asleep, when the next reading is due. No seconds, no red, no countdown: nothing here hurries a hand. */
export function Asleep({ screen, visit, onAct }: { screen: OrderScreen; visit: VisitView; onAct: (next: NextAction) => void }) {
  if (!visit.asleepSince) return null;
  const zone = screen.practice.zone;
  const last = visit.readings.at(-1)?.at ?? visit.asleepSince;
  const minutes = Math.max(0, Math.floor((Date.parse(screen.now) - Date.parse(visit.asleepSince)) / 60_000));
  const due = new Date(Date.parse(last) + READINGS_APART_MINUTES * 60_000).toISOString();
  return (
    <section className="sheet asleep" aria-label="Asleep">
      <div>
        <h2>{screen.dog.callName || screen.dog.name} is asleep</h2>
        <p className="small quiet">
          {visit.admitted && <span className="val">{visit.admitted.weightKg} kg today. </span>}
          {visit.vet && `Vet ${visit.vet}`}
          {visit.nurse && `, nurse ${visit.nurse}`}
        </p>
        <div className="do-now">
          {actsBesideTheDog(screen).map((n) => (
            <Button key={n.action + n.on.id} size="tablet" kind={n.action === 'recordReading' ? 'ink' : 'plain'} onPress={() => onAct(n)}>
              {n.label}
              {ofWhat(screen, n) && `: ${ofWhat(screen, n)}`}
            </Button>
          ))}
        </div>
      </div>
      <div className="clock" role="timer" aria-label={`Asleep for ${minutes} minutes`}>
        {minutes} min
        <small>
          asleep since {timeAt(visit.asleepSince, zone)}. Next reading by <b>{timeAt(due, zone)}</b>
        </small>
      </div>
    </section>
  );
}
