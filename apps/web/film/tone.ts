/** How the window that a film came with is moved: the same for every film, whatever its depth. */
export interface Tone {
  /** In parts of the film's own window; more is brighter. */
  level: number;
  /** As a multiple of the film's own window; less has more contrast. */
  width: number;
  turned: boolean;
}
export interface Shown { black: number; white: number; negative: boolean }

export const asItCame: Tone = { level: 0, width: 1, turned: false };
export const NARROWEST = 0.05;
export const WIDEST = 4;

const held = (n: number, least: number, most: number) => Math.min(most, Math.max(least, n));

/** A hand across makes the window wider or narrower, a hand upwards brighter. */
export const toned = (tone: Tone, level: number, widthBy: number): Tone => ({ ...tone, level: held(tone.level + level, -2, 2), width: held(tone.width * widthBy, NARROWEST, WIDEST) });

export function windowOf({ black, white, negative }: Shown, { level, width, turned }: Tone): Shown {
  const own = white - black;
  const bright = negative !== turned ? level : -level;
  const middle = (black + white) / 2 + bright * own;
  const half = (own * width) / 2;
  return { black: middle - half, white: middle + half, negative: negative !== turned };
}

/** A film has far fewer shades than pixels: each value's, as a dot of the screen (bytes red, green, blue, solid). */
export function shadesOf({ black, white, negative }: Shown, most: number): Uint32Array {
  const shades = new Uint32Array(most + 1);
  const dots = new Uint8ClampedArray(shades.buffer);
  for (let value = 0; value <= most; value++) {
    const part = Math.min(1, Math.max(0, (value - black) / (white - black)));
    dots.fill(Math.round(255 * (negative ? 1 - part : part)), 4 * value, 4 * value + 3);
    dots[4 * value + 3] = 255;
  }
  return shades;
}
