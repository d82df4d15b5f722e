export interface GreyWindow {
  centre: number;
  width: number;
  /** DICOM PS3.3 C.11.2.1.2 and C.11.2.1.3; LINEAR where the file does not say. */
  shape?: 'LINEAR' | 'LINEAR_EXACT' | 'SIGMOID';
}

export interface GreyScale {
  window: GreyWindow | undefined;
  slope: number;
  intercept: number;
  inverted: boolean;
}

/** Values of any depth in 8 bits; without a window, from the least value that is there to the greatest. */
export function inEightBits(values: Int32Array | Uint16Array, { window, slope, intercept, inverted }: GreyScale): Buffer {
  const { least, most } = rangeOf(values);
  const used = window ?? { centre: ((least + most) / 2) * slope + intercept + 0.5, width: (most - least) * Math.abs(slope) + 1 };
  // A film has far fewer shades than pixels, so each is computed once.
  const shades = new Uint8Array(most - least + 1);
  for (let i = 0; i < shades.length; i++) {
    const shade = Math.round(255 * ramp((least + i) * slope + intercept, used));
    shades[i] = inverted ? 255 - shade : shade;
  }
  const grey = Buffer.allocUnsafe(values.length);
  for (let i = 0; i < values.length; i++) grey[i] = shades[values[i]! - least]!;
  return grey;
}

/** From 0 to 1. */
function ramp(value: number, { centre, width, shape = 'LINEAR' }: GreyWindow): number {
  if (shape === 'SIGMOID') return 1 / (1 + Math.exp((-4 * (value - centre)) / width));
  const [middle, span] = shape === 'LINEAR' ? [centre - 0.5, width - 1] : [centre, width];
  if (value <= middle - span / 2) return 0;
  if (value > middle + span / 2) return 1;
  return (value - middle) / span + 0.5;
}

export function rangeOf(values: Int32Array | Uint16Array | Uint8Array): { least: number; most: number } {
  let [least, most] = [values[0] ?? 0, values[0] ?? 0];
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return { least, most };
}
