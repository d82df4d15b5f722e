import { useEffect, useRef, useState } from 'react';
import type { PictureView, Size } from './picture-view.js';
import { windowOf, type Tone } from './tone.js';
import type { OpenFilm } from './use-film.js';

/** Fills its box with the part of the film that is looked at. */
export function FilmCanvas({ film, view, tone, label }: { film: OpenFilm; view: PictureView; tone: Tone; label: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [box, setBox] = useState<Size>();
  useEffect(() => {
    const element = canvas.current!;
    const watch = new ResizeObserver(() => {
      const fine = Math.min(2, window.devicePixelRatio || 1);
      setBox({ width: Math.round(element.clientWidth * fine), height: Math.round(element.clientHeight * fine) });
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  useEffect(() => {
    if (box && box.width > 0 && box.height > 0) film.draw(canvas.current!, { view, box, shown: windowOf(film.shown, tone) });
  }, [film, view, tone, box]);
  return <canvas ref={canvas} className="film-canvas" role="img" aria-label={label} />;
}
