/** Where the film lies under the window: its centre moved by x and y of the screen, drawn at `scale`. */
export interface FilmView { scale: number; x: number; y: number }
export interface Spot { x: number; y: number }

export const fitted: FilmView = { scale: 1, x: 0, y: 0 };
const most = 12;

/** Grows or shrinks about a spot, measured from the middle of the window, so that what is under it stays under it. */
export function zoomAt(view: FilmView, by: number, at: Spot): FilmView {
  const scale = Math.min(most, Math.max(1, view.scale * by));
  if (scale === 1) return fitted;
  const real = scale / view.scale;
  return { scale, x: at.x - (at.x - view.x) * real, y: at.y - (at.y - view.y) * real };
}

/** Moves, but never so far that the film leaves the window. */
export function panBy(view: FilmView, dx: number, dy: number, window: { width: number; height: number }): FilmView {
  const far = (size: number) => ((view.scale - 1) * size) / 2;
  const held = (n: number, size: number) => Math.min(far(size), Math.max(-far(size), n));
  return { scale: view.scale, x: held(view.x + dx, window.width), y: held(view.y + dy, window.height) };
}

export const between = (a: Spot, b: Spot): Spot => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
export const apart = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);
