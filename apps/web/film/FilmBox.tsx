import type { ReactNode } from 'react';
import { FilmCanvas } from './FilmCanvas.js';
import './film.css';
import { useFilmGestures } from './use-film-gestures.js';
import type { Film } from './use-film.js';
import type { Look } from './use-look.js';
import { t } from '../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

const HOW: PageSentence = 'Plus and minus bring it nearer or further, arrows move it, 0 shows all of it, arrows with Shift change window and level.';

/** One film, as large as there is room, under hands. `over` lies on the picture and may take the hand's moves for itself. */
export function FilmBox({ film: { film, failed }, look, label, preview, over }: { film: Film; look: Look; label: string; preview: string; over?: ReactNode }) {
  const { box, handlers } = useFilmGestures(look);
  return (
    <div ref={box} className="film-box" role="group" tabIndex={0} aria-label={`${label}. ${t(HOW)}`} data-shown={film ? 'film' : failed === undefined ? 'preview' : 'failed'} {...handlers}>
      {film ? <FilmCanvas film={film} view={look.view} tone={look.tone} label={label} /> : <img src={preview} alt={label} draggable={false} />}
      {over}
      {failed !== undefined && (
        <p className="film-says small" role="status">
          <b>{t('Only a small copy is shown.')}</b>{' '}{t('The film itself could not be fetched, so window and level stay as they are. It is kept whole; open the picture again in a moment.')}
        </p>
      )}
    </div>
  );
}
