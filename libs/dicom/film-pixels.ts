import type { FilmPixels } from '#libs/contracts/film-pixels';
import { rangeOf, type GreyScale } from './grey-window.js';
import { picturePixels } from './picture-pixels.js';
import { greyOf } from './render-grey.js';

/** Every grey value of a stored film, to be looked at with a window of one's own. It must have passed `checkImage`, and a preview of it must have been made. */
export async function filmPixels(content: Buffer, kind: 'dicom' | 'png' | 'jpeg'): Promise<FilmPixels> {
  if (kind === 'dicom') {
    const { columns, rows, values, scale } = await greyOf(content);
    return fromNought(columns, rows, values, scale);
  }
  const { columns, rows, values, bits } = await picturePixels(content, kind);
  // A picture of 8 bits is meant as it is; films of 12 bits kept in 16 would come out black.
  return fromNought(columns, rows, values, { window: bits > 8 ? undefined : { centre: 127.5, width: 255, shape: 'LINEAR_EXACT' }, slope: 1, intercept: 0, inverted: false });
}

function fromNought(columns: number, rows: number, values: Int32Array | Uint16Array | Uint8Array, { window, slope, intercept, inverted }: GreyScale): FilmPixels {
  const { least, most } = rangeOf(values);
  const counted = new Uint16Array(values.length);
  for (let i = 0; i < values.length; i++) counted[i] = values[i]! - least;
  const whole = { columns, rows, most: most - least, values: counted };
  if (!window) return { ...whole, black: 0, white: Math.max(1, most - least), negative: inverted };
  // DICOM PS3.3 C.11.2.1.2: the linear function leaves half a value at either end; a curved one is drawn as the straight line of the same width.
  const [middle, span] = (window.shape ?? 'LINEAR') === 'LINEAR' ? [window.centre - 0.5, window.width - 1] : [window.centre, window.width];
  const stored = (value: number) => (value - intercept) / slope - least;
  const [one, other] = [stored(middle - span / 2), stored(middle + span / 2)];
  return { ...whole, black: Math.min(one, other), white: Math.max(one, other, Math.min(one, other) + 1), negative: inverted !== slope < 0 };
}
