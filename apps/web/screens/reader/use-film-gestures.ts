import { useCallback, useEffect, useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';
import { apart, between, fitted, panBy, zoomAt, type FilmView, type Spot } from './film-view.js';

/** Wheel, drag, two fingers and keys, all on one view of the film. */
export function useFilmGestures() {
  const [view, setView] = useState<FilmView>(fitted);
  const box = useRef<HTMLDivElement>(null);
  const touching = useRef(new Map<number, Spot>());

  const zoom = useCallback((by: number, at: Spot = { x: 0, y: 0 }) => setView((v) => panBy(zoomAt(v, by, at), 0, 0, sizeOf(box.current))), []);
  const pan = (dx: number, dy: number) => setView((v) => panBy(v, dx, dy, sizeOf(box.current)));

  useEffect(() => {
    const element = box.current;
    if (!element) return;
    // React's own wheel listener is passive and could not keep the page from scrolling.
    const onWheel = (e: WheelEvent) => {
      e.preventDefault();
      zoom(Math.exp(-e.deltaY / 400), fromMiddle(element, e));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [zoom]);

  const onPointerDown = (e: PointerEvent<HTMLDivElement>) => {
    e.currentTarget.setPointerCapture(e.pointerId);
    touching.current.set(e.pointerId, fromMiddle(e.currentTarget, e));
  };
  const onPointerMove = (e: PointerEvent<HTMLDivElement>) => {
    const was = touching.current.get(e.pointerId);
    if (!was) return;
    const now = fromMiddle(e.currentTarget, e);
    const other = [...touching.current].find(([id]) => id !== e.pointerId)?.[1];
    if (other) {
      const middle = between(now, other);
      const before = between(was, other);
      zoom(apart(now, other) / Math.max(1, apart(was, other)), middle);
      pan(middle.x - before.x, middle.y - before.y);
    } else pan(now.x - was.x, now.y - was.y);
    touching.current.set(e.pointerId, now);
  };
  const onPointerUp = (e: PointerEvent<HTMLDivElement>) => touching.current.delete(e.pointerId);

  const onKeyDown = (e: KeyboardEvent<HTMLDivElement>) => {
    const steps: Record<string, () => void> = {
      '+': () => zoom(1.25), '=': () => zoom(1.25), '-': () => zoom(0.8), '0': () => setView(fitted),
      ArrowLeft: () => pan(40, 0), ArrowRight: () => pan(-40, 0), ArrowUp: () => pan(0, 40), ArrowDown: () => pan(0, -40),
    };
    const step = !e.ctrlKey && !e.metaKey && steps[e.key];
    if (!step) return;
    e.preventDefault();
    step();
  };

  return { view, zoom, fit: () => setView(fitted), box, handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp, onKeyDown } };
}

const sizeOf = (box: HTMLElement | null) => ({ width: box?.clientWidth ?? 0, height: box?.clientHeight ?? 0 });

function fromMiddle(box: HTMLElement, e: { clientX: number; clientY: number }): Spot {
  const r = box.getBoundingClientRect();
  return { x: e.clientX - r.left - r.width / 2, y: e.clientY - r.top - r.height / 2 };
}
