import { unpackPixels, type FilmPixels } from '#libs/contracts/film-pixels';
import { drawPart, levelsOf, type Level } from './draw-part.js';
import type { PictureView, Size } from './picture-view.js';
import { shadesOf, type Shown } from './tone.js';

export type ToWorker = { do: 'open'; url: string } | { do: 'draw'; view: PictureView; box: Size; shown: Shown };
export type Opened = Size & { most: number; shown: Shown };
export type FromWorker = { is: 'opened'; film: Opened } | { is: 'failed'; status: number } | { is: 'drawn'; dots: ArrayBuffer; box: Size };

/** One film, apart from the page: no hand ever waits for its pixels. */
let levels: Level[] = [];
let most = 0;
let last: { words: string; shades: Uint32Array } | undefined;

const tell = (message: FromWorker, transfer: Transferable[] = []) => self.postMessage(message, { transfer });

async function open(url: string): Promise<void> {
  let status = 0;
  try {
    const answer = await fetch(url, { credentials: 'same-origin' });
    status = answer.status;
    if (!answer.ok) return tell({ is: 'failed', status });
    opened(unpackPixels(new Uint8Array(await answer.arrayBuffer())));
  } catch {
    tell({ is: 'failed', status });
  }
}

function opened({ columns: width, rows: height, values, black, white, negative, ...film }: FilmPixels): void {
  most = film.most;
  levels = levelsOf({ width, height, values });
  tell({ is: 'opened', film: { width, height, most, shown: { black, white, negative } } });
}

function draw(view: PictureView, box: Size, shown: Shown): void {
  const words = `${shown.black} ${shown.white} ${shown.negative}`;
  if (last?.words !== words) last = { words, shades: shadesOf(shown, most) };
  const dots = drawPart(levels, view, box, last.shades).buffer as ArrayBuffer;
  tell({ is: 'drawn', dots, box }, [dots]);
}

self.onmessage = ({ data }: MessageEvent<ToWorker>) => (data.do === 'open' ? void open(data.url) : draw(data.view, data.box, data.shown));
