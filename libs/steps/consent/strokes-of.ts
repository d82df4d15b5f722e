type Drawn = { width: number; height: number; strokes: [x: number, y: number][][] };

/**
 * The strokes of a drawn signature, from the one form of drawing that the signing page makes: straight lines in
 * whole pixels. Anything else is left out of the paper; what was sent stays in the fact.
 */
export function strokesOf(svg: string | undefined): Drawn {
  const box = /viewBox="0 0 (\d{1,4}) (\d{1,4})"/.exec(svg ?? '');
  const path = /<path d="([MLh\d .-]*)"/.exec(svg ?? '')?.[1];
  if (!box || !path) return { width: 0, height: 0, strokes: [] };
  const strokes = path.split('M').filter(Boolean).map((line) => [...line.matchAll(/(-?\d+(?:\.\d+)?) (-?\d+(?:\.\d+)?)/g)].map(([, x, y]): [number, number] => [Number(x), Number(y)]));
  return { width: Number(box[1]), height: Number(box[2]), strokes: strokes.filter((s) => s.length > 0) };
}
