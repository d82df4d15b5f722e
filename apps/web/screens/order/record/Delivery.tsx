import type { DeliveryView } from '#libs/contracts/screens/order';
import { channelNames } from '#libs/contracts/dispatch';
import { t } from '../../../words/t.js';

/** How far the films of one sending are: a bar, and the same in words. */
export function Delivery({ delivery: { channel, state, words, films, notes }, study }: { delivery: DeliveryView; study: string }) {
  const there = films.filter((f) => f.state === 'arrived').length;
  const refused = films.filter((f) => f.state === 'refused');
  const ends: Record<string, string> = { stopped: t('It has stopped.'), refused: t('Not all were taken.'), ended: t('A person has ended it.') };
  return (
    <div className="small">
      <p role="status">
        <progress value={there} max={films.length} aria-label={t('{study}: how many films the centre has', { study })} /> {t('{there} of {all, plural, one {# image} other {# images}}.', { there, all: films.length })} {t.known(channelNames[channel])}. {ends[state]}
      </p>
      {words && refused.length === 0 && <p className="err">{words}</p>}
      {refused.map((f) => (
        <p key={f.name} className="err">
          <b>{f.name}:</b> {f.words}
        </p>
      ))}
      {notes.map((note, i) => (
        <p key={i}>
          {note.state === 'arrived' ? t('The archive was told not to use {films, plural, one {# film} other {# films}} any more.', { films: note.films }) : t('The archive is being told not to use {films, plural, one {# film} other {# films}} any more.', { films: note.films })} {t.known(note.words)}
        </p>
      ))}
    </div>
  );
}
