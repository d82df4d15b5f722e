import sharp from 'sharp';
import { burntText } from './phantoms/burnt-text.js';
import { drawPhantom } from './phantoms/draw-phantom.js';
import type { PhantomView } from './phantoms/geometry.js';

/** How a film came out: as it should, of a tighter dog, or with the pelvis turned. */
export type FilmKind = 'even' | 'tight' | 'turned';

const INDEX = { even: [0.38, 0.44], tight: [0.21, 0.27], turned: [0.38, 0.44] } as const;

/**
 * Draws each kind of film once and writes every dog's own number on a copy: the drawing takes most of the time,
 * and the truth of a phantom lies in its geometry, not in its label.
 */
export class FilmRoom {
  readonly #drawn = new Map<string, Promise<Buffer>>();

  async film(view: string, kind: FilmKind, lines: string[]): Promise<Buffer> {
    const blank = await this.#blank(view as PhantomView, kind);
    const { width, height } = await sharp(blank).metadata();
    const text = lines.map((line, i) => burntText(line, 48, height - 48 - 26 * (lines.length - 1 - i), 18, 'start', 200)).join('');
    const label = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${text}</svg>`;
    return sharp(blank).composite([{ input: Buffer.from(label) }]).removeAlpha().greyscale().toColourspace('b-w').png({ compressionLevel: 6 }).toBuffer();
  }

  #blank(view: PhantomView, kind: FilmKind): Promise<Buffer> {
    const elbow = view.startsWith('ml');
    const key = elbow ? view : `${view} ${kind}`;
    let blank = this.#drawn.get(key);
    if (!blank) {
      const [left, right] = elbow ? [0, 1] : INDEX[kind];
      blank = drawPhantom({ view, left, right, seed: kind === 'tight' ? 23 : 11, label: '', date: '', ...(kind === 'turned' && !elbow ? { rotationDegrees: 7 } : {}) }).then(({ png }) => png);
      this.#drawn.set(key, blank);
    }
    return blank;
  }
}
