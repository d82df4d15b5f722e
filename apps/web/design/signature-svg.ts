interface Point { x: number; y: number }
/** The most signs that the server keeps of one signature. */
const ROOM = 40_000;

/** Strokes as one small drawing: whole pixels, and points left out of long strokes until it fits. */
export function signatureSvg(strokes: Point[][], width: number, height: number): string | undefined {
  const drawn = strokes.filter((stroke) => stroke.length > 0);
  if (drawn.length === 0) return undefined;
  for (let every = 1; ; every *= 2) {
    const path = drawn.map((stroke) => line(stroke.filter((_, i) => i % every === 0 || i === stroke.length - 1))).join('');
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${Math.round(width)} ${Math.round(height)}"><path d="${path}" fill="none" stroke="#1b2230" stroke-width="2.5" stroke-linecap="round" stroke-linejoin="round"/></svg>`;
    if (svg.length <= ROOM) return svg;
    if (every > 1024) return undefined;
  }
}

const line = (points: Point[]) => points.map((p, i) => `${i === 0 ? 'M' : 'L'}${Math.round(p.x)} ${Math.round(p.y)}`).join('') + (points.length === 1 ? 'h1' : '');
