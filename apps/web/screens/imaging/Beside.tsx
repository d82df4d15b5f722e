import { FilmBox } from '../../film/FilmBox.js';
import { sameOn, type PictureView } from '../../film/picture-view.js';
import { useFilm } from '../../film/use-film.js';
import type { Look } from '../../film/use-look.js';
import { t } from '../../words/t.js';
import type { Exposure } from './view-rows.js';

/** Another attempt, looked at as the first is: whichever of the two is moved, both move. */
export function Beside({ order, film, look }: { order: string; film: Exposure; look: Look }) {
  const base = `/api/orders/${order}/images/${film.image}`;
  const shown = useFilm(`${base}/pixels`);
  const picture = film.picture ?? shown.film ?? look.picture;
  const label = t('{view}, attempt {attempt}', { view: film.viewName, attempt: film.attempt });
  const back = ({ x, y }: { x: number; y: number }) => ({ x: (x * look.picture.width) / picture.width, y: (y * look.picture.height) / picture.height });
  const there: Look = {
    ...look,
    picture,
    view: sameOn(look.view, look.picture, picture),
    setView: (next) => look.setView((v: PictureView) => (typeof next === 'function' ? sameOn(next(sameOn(v, look.picture, picture)), picture, look.picture) : sameOn(next, picture, look.picture))),
    zoom: (by, about) => look.zoom(by, about && back(about)),
    pan: (dx, dy) => {
      const by = back({ x: dx, y: dy });
      look.pan(by.x, by.y);
    },
  };
  return (
    <figure>
      <FilmBox film={shown} look={there} label={label} preview={`${base}/preview`} />
      <figcaption className="label">{label}</figcaption>
    </figure>
  );
}
