import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../design/Button.js';
import { t } from '../../words/t.js';
import { useMe } from '../me.js';
import { tourOf } from './tours.js';
import './tour.css';

const seenKey = (person: string | null) => `tour-seen:${person}`;

/** One thing at a time, once a person and device; it stands above the page and in nobody's way. */
export function Tour() {
  const me = useMe();
  const [at, setAt] = useState(() => (localStorage.getItem(seenKey(me.id)) ? -1 : 0));
  const stops = tourOf(me);
  const stop = stops[at];
  if (!stop) return null;
  const end = () => {
    localStorage.setItem(seenKey(me.id), 'yes');
    setAt(-1);
  };
  return (
    <section className="tour sheet noprint" aria-label={t('A short tour')}>
      <p role="status">
        <b>{at === 0 ? t('New here? {at} of {count}.', { at: 1, count: stops.length }) : t('{at} of {count}.', { at: at + 1, count: stops.length })}</b> {t(stop.words)} {stop.to && <Link to={stop.to}>{t('Show me where')}</Link>}
      </p>
      <div className="acts">
        {at > 0 && <Button onPress={() => setAt(at - 1)}>{t('Back')}</Button>}
        {at < stops.length - 1 ? <Button onPress={() => setAt(at + 1)}>{t('Next')}</Button> : <Link to="/help" onClick={end} className="btn">{t('More in Help')}</Link>}
        <Button onPress={end}>{at < stops.length - 1 ? t('Leave the tour') : t('Done')}</Button>
      </div>
    </section>
  );
}
