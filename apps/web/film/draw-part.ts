import type { PictureView, Size } from './picture-view.js';

/** A picture, and the same again at half its size, and at half of that. */
export interface Level extends Size { values: Uint16Array }

/** The dark around a picture: #050606. */
const GROUND = new Uint32Array(new Uint8Array([5, 6, 6, 255]).buffer)[0]!;
const SMALLEST = 256;

export function levelsOf(whole: Level): Level[] {
  const levels = [whole];
  for (let last = whole; Math.min(last.width, last.height) > SMALLEST; ) levels.push((last = halved(last)));
  return levels;
}

function halved({ width, height, values }: Level): Level {
  const half = { width: width >> 1, height: height >> 1, values: new Uint16Array((width >> 1) * (height >> 1)) };
  for (let y = 0, to = 0; y < half.height; y++) {
    for (let x = 0, from = 2 * y * width; x < half.width; x++, from += 2) half.values[to++] = (values[from]! + values[from + 1]! + values[from + width]! + values[from + width + 1]! + 2) >> 2;
  }
  return half;
}

/** Draws the part of a picture that fits a box, looking only where the box has dots; between pixels it takes from all four. */
export function drawPart(levels: readonly Level[], view: PictureView, box: Size, shades: Uint32Array): Uint32Array {
  const out = new Uint32Array(box.width * box.height).fill(GROUND);
  const dots = Math.max(view.width / box.width, view.height / box.height);
  const n = Math.max(0, Math.min(levels.length - 1, Math.floor(Math.log2(dots))));
  const level = levels[n]!;
  const [step, last] = [dots / 2 ** n, { x: level.width - 1, y: level.height - 1 }];
  const across = columns((view.x + view.width / 2 - (box.width / 2) * dots) / 2 ** n, step, box.width, level.width);
  const down = (view.y + view.height / 2 - (box.height / 2) * dots) / 2 ** n;
  for (let y = 0; y < box.height; y++) {
    const at = down + (y + 0.5) * step;
    if (at < 0 || at >= level.height) continue;
    const upper = Math.min(last.y, Math.max(0, Math.floor(at - 0.5)));
    const share = Math.min(1, Math.max(0, at - 0.5 - upper));
    const [row, below] = [upper * level.width, Math.min(last.y, upper + 1) * level.width];
    for (let x = across.from; x < across.to; x++) {
      const left = across.left[x]!;
      const right = Math.min(last.x, left + 1);
      const part = across.share[x]!;
      const above = level.values[row + left]! * (1 - part) + level.values[row + right]! * part;
      const under = level.values[below + left]! * (1 - part) + level.values[below + right]! * part;
      out[y * box.width + x] = shades[Math.round(above * (1 - share) + under * share)]!;
    }
  }
  return out;
}

/** Which pixels each column of dots lies between: the same for every row. */
function columns(start: number, step: number, dots: number, width: number) {
  const left = new Int32Array(dots);
  const share = new Float32Array(dots);
  let [from, to] = [dots, 0];
  for (let x = 0; x < dots; x++) {
    const at = start + (x + 0.5) * step;
    if (at < 0 || at >= width) continue;
    from = Math.min(from, x);
    to = x + 1;
    left[x] = Math.min(width - 1, Math.max(0, Math.floor(at - 0.5)));
    share[x] = Math.min(1, Math.max(0, at - 0.5 - left[x]!));
  }
  return { left, share, from, to };
}
