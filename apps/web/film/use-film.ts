import { useEffect, useState } from 'react';
import type { FromWorker, Opened, ToWorker } from './film-worker.js';
import type { PictureView, Size } from './picture-view.js';
import type { Shown } from './tone.js';

type Part = { view: PictureView; box: Size; shown: Shown };
export type OpenFilm = Opened & {
  /** Draws on the canvas when the film's own thread is free; of several wishes only the newest is drawn. */
  draw: (canvas: HTMLCanvasElement, part: Part) => void;
};
export type Film = { url: string; film?: OpenFilm; failed?: number };

/** A film's pixels at their full depth, in a thread of their own for as long as the film is looked at. */
export function useFilm(url: string): Film {
  const [known, setKnown] = useState<Film>({ url });
  useEffect(() => {
    const worker = new Worker(new URL('./film-worker.ts', import.meta.url), { type: 'module' });
    const send = (message: ToWorker) => worker.postMessage(message);
    let wanted: { canvas: HTMLCanvasElement; part: Part } | undefined;
    let drawing: HTMLCanvasElement | undefined;
    const next = () => {
      if (drawing || !wanted) return;
      drawing = wanted.canvas;
      send({ do: 'draw', ...wanted.part });
      wanted = undefined;
    };
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
      if (data.is === 'opened') setKnown({ url, film: { ...data.film, draw: (canvas, part) => ((wanted = { canvas, part }), next()) } });
      else if (data.is === 'failed') setKnown({ url, failed: data.status });
      else {
        if (drawing) put(drawing, data.dots, data.box);
        drawing = undefined;
        next();
      }
    };
    worker.onerror = () => setKnown({ url, failed: 0 });
    send({ do: 'open', url });
    return () => worker.terminate();
  }, [url]);
  // What is known of the film before is not known of this one.
  return known.url === url ? known : { url };
}

function put(canvas: HTMLCanvasElement, dots: ArrayBuffer, { width, height }: Size): void {
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')?.putImageData(new ImageData(new Uint8ClampedArray(dots), width, height), 0, 0);
}
