export interface GreyWindow {
  centre: number;
  width: number;
}

export interface GreyScale {
  window: GreyWindow | undefined;
  slope: number;
  intercept: number;
  inverted: boolean;
}

/** Values of any depth in 8 bits; without a window, from the least value that is there to the greatest. */
export function inEightBits(values: Int32Array | Uint16Array, { window, slope, intercept, inverted }: GreyScale): Buffer {
  const used = window ?? rangeOf(values, slope, intercept);
  const grey = Buffer.alloc(values.length);
  for (let i = 0; i < values.length; i++) {
    const shade = Math.round(255 * ramp(values[i]! * slope + intercept, used));
    grey[i] = inverted ? 255 - shade : shade;
  }
  return grey;
}

/** The linear window of DICOM PS3.3 C.11.2.1.2.1, from 0 to 1. */
function ramp(value: number, { centre, width }: GreyWindow): number {
  if (value <= centre - 0.5 - (width - 1) / 2) return 0;
  if (value > centre - 0.5 + (width - 1) / 2) return 1;
  return (value - (centre - 0.5)) / (width - 1) + 0.5;
}

function rangeOf(values: Int32Array | Uint16Array, slope: number, intercept: number): GreyWindow {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return { centre: ((least + most) / 2) * slope + intercept + 0.5, width: (most - least) * Math.abs(slope) + 1 };
}
