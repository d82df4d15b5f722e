import { strokesOf } from './strokes-of.js';

const drawing = (path: string) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 120"><path d="${path}" fill="none"/></svg>`;

describe('strokes of a signature', () => {
  it('are its lines, one list for each', () => {
    expect(strokesOf(drawing('M10 20L30 40L50 20M5 5L6 6'))).toEqual({ width: 300, height: 120, strokes: [[[10, 20], [30, 40], [50, 20]], [[5, 5], [6, 6]]] });
  });

  it('are numbers and nothing else that a drawing might bring', () => {
    expect(strokesOf(drawing('M10 20" onload="alert(1)')).strokes).toEqual([[[10, 20]]]);
  });

  it.each([undefined, '', 'not a drawing', '<svg viewBox="0 0 99999 1"><path d="M1 1"/></svg>'])('are none where the drawing is not of our own form: %j', (svg) => {
    expect(strokesOf(svg).strokes).toEqual([]);
  });
});
