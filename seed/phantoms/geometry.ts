/** Pixels of the finished picture; y grows downward. */
export interface Point {
  x: number;
  y: number;
}

export interface Circle extends Point {
  r: number;
}

export type HipView = 'vdExtended' | 'vdCompression' | 'vdDistraction' | 'vdLoaded';
export type ElbowView = 'mlFlexedLeft' | 'mlFlexedRight';
export type PhantomView = HipView | ElbowView;

export interface HipSide {
  head: Circle;
  /** Inner edge of the acetabulum. */
  socket: Circle;
  /** Distance of the two centres divided by the radius of the head, exactly as drawn. */
  index: number;
  obturatorWidth: number;
}

/** Left and right are the dog's own: its left lies on the right of the picture. */
export interface HipGeometry {
  kind: 'hips';
  width: number;
  height: number;
  mmPerPixel: number;
  rotationDegrees: number;
  left: HipSide;
  right: HipSide;
}

export interface ElbowGeometry {
  kind: 'elbow';
  width: number;
  height: number;
  mmPerPixel: number;
  condyle: Circle;
  spurMm: number;
}

/** A small repeatable stream of numbers from 0 to 1 (mulberry32), so that a seed always draws the same dog. */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
