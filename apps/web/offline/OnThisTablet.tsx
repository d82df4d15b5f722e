import type { OrderScreen } from '#libs/contracts/screens/order';
import { Button } from '../design/Button.js';
import { timeAt } from '../design/format.js';
import { useMe } from '../shell/me.js';
import { t } from '../words/t.js';
import { entryWords } from './entry-words.js';
import { useSilentSince } from './network.js';
import './offline.css';
import { takeOff, tryAgain, useWaiting } from './outbox.js';
import { sendWaiting } from './send-waiting.js';
import { serverTime } from './server-time.js';

/** Since when nobody answers, and what waits for that; dashes mean that it is on this tablet only. */
export function OnThisTablet({ screen }: { screen: OrderScreen }) {
  const entries = useWaiting().filter((w) => w.order === screen.id);
  const since = useSilentSince();
  const me = useMe();
  if (since === null && entries.length === 0) return null;
  const zone = screen.practice.zone;
  const waiting = entries.filter((w) => !w.refused).length;
  return (
    <section className="sheet on-tablet" aria-label={t('On this tablet')}>
      <p role="status">
        {since !== null && <b>{t('No network since {time}.', { time: timeAt(serverTime(screen.id, since), zone) })}</b>}{' '}
        {waiting > 0 && `${t('{waiting, plural, one {# entry waits on this tablet and goes by itself} other {# entries wait on this tablet and go by themselves, in order,}} when it is back.', { waiting })} `}
        {since !== null && t('Below is the order as it was last seen. What is noted beside the dog is kept; what is decided needs the network.')}
      </p>
      {entries.length > 0 && (
        <ol className="plain">
          {entries.map((w) => (
            <li key={w.key} className="waits">
              <time dateTime={w.at}>{timeAt(w.at, zone)}</time> {entryWords(w)}{' '}
              {w.refused ? (
                <span className="err">
                  <b>{t('Not stored.')}</b> {t.known(w.refused)}
                  <span className="acts">
                    <Button onPress={() => void tryAgain(w).then(sendWaiting)}>{t('Send again')}</Button>
                    <Button onPress={() => void takeOff(w)}>{t('Take it off this tablet')}</Button>
                  </span>
                </span>
              ) : (
                <span className="label">{w.by === me.id ? t('waits here') : t('waits until {name} signs in here', { name: w.byName })}</span>
              )}
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
