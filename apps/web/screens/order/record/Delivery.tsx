import type { DeliveryView } from '#libs/contracts/screens/order';
import { channelNames } from '#libs/contracts/dispatch';
import { momentAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';

/** How far the films of one sending are: a bar, and the same in words. */
export function Delivery({ delivery: { channel, state, words, films, notes }, study, zone }: { delivery: DeliveryView; study: string; zone: string }) {
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
      {notes.map((note) => <Note key={note.id} note={note} zone={zone} />)}
    </div>
  );
}

/** What an archive was told of films that it has, and who told the centre where the archive would not hear it. */
function Note({ note: { words, reasons, films, state, says, told }, zone }: { note: DeliveryView['notes'][number]; zone: string }) {
  const about = [t.known(words), ...reasons].join(' ');
  if (told) return <p>{t('{by} told {whom} at the centre by {how, select, phone {phone} other {mail}} on {moment} not to use {films, plural, one {# film} other {# films}} any more.', { ...told, moment: momentAt(told.at, zone), films })} {about}</p>;
  if (state === 'refused' || state === 'stopped') {
    return (
      <p className="err">
        <b>{state === 'refused' ? t('The archive does not take the note that {films, plural, one {# film is} other {# films are}} not to be used any more.', { films }) : t('The archive could not be told that {films, plural, one {# film is} other {# films are}} not to be used any more.', { films })}</b> {about} {says}
      </p>
    );
  }
  return <p>{state === 'arrived' ? t('The archive was told not to use {films, plural, one {# film} other {# films}} any more.', { films }) : t('The archive is being told not to use {films, plural, one {# film} other {# films}} any more.', { films })} {about}</p>;
}
