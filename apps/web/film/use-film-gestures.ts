import { useEffect, useRef, type KeyboardEvent, type PointerEvent } from 'react';
import { middleOf, pixelsPerDot, placeUnder, type Size } from './picture-view.js';
import type { Point } from '#libs/science/measurement/plane';
import type { Look } from './use-look.js';

/** Of a drag right across the screen: our own choice, no source. */
const LEVEL_A_DOT = 1 / 400;
const WIDTH_A_DOT = 1 / 200;

/** Wheel, drag, two fingers and keys, all on one look at the film; with Shift, or the other button, a drag changes window and level. */
export function useFilmGestures(look: Look) {
  const box = useRef<HTMLDivElement>(null);
  const touching = useRef(new Map<number, Point>());
  const latest = useRef(look);
  useEffect(() => {
    latest.current = look;
  });
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    // React's own wheel listener is passive and could not keep the page from scrolling.
    const onWheel = (e: WheelEvent) => {
      e.preventDefault();
      const { view, zoom } = latest.current;
      zoom(Math.exp(-e.deltaY / 400), placeUnder(view, sizeOf(element), fromCorner(element, e)));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, []);

  const onPointerDown = (e: PointerEvent<HTMLDivElement>) => {
    e.currentTarget.setPointerCapture(e.pointerId);
    touching.current.set(e.pointerId, fromCorner(e.currentTarget, e));
  };
  const onPointerMove = (e: PointerEvent<HTMLDivElement>) => {
    const was = touching.current.get(e.pointerId);
    if (!was) return;
    const size = sizeOf(e.currentTarget);
    const now = fromCorner(e.currentTarget, e);
    const other = [...touching.current].find(([id]) => id !== e.pointerId)?.[1];
    touching.current.set(e.pointerId, now);
    const dots = pixelsPerDot(look.view, size);
    const by = { x: now.x - was.x, y: now.y - was.y };
    if (other) {
      look.zoom(apart(now, other) / Math.max(1, apart(was, other)), placeUnder(look.view, size, between(now, other)));
      look.pan((-by.x / 2) * dots, (-by.y / 2) * dots);
    } else if (e.shiftKey || (e.buttons & 2) !== 0) look.brighten(-by.y * LEVEL_A_DOT, Math.exp(by.x * WIDTH_A_DOT));
    else look.pan(-by.x * dots, -by.y * dots);
  };
  const onPointerUp = (e: PointerEvent<HTMLDivElement>) => void touching.current.delete(e.pointerId);

  const onKeyDown = (e: KeyboardEvent<HTMLDivElement>) => {
    const step = look.view.width / 10;
    const keys: Record<string, () => void> = {
      '+': () => look.zoom(1.25, middleOf(look.view)), '=': () => look.zoom(1.25, middleOf(look.view)), '-': () => look.zoom(0.8, middleOf(look.view)), '0': look.whole,
      ArrowLeft: () => look.pan(-step, 0), ArrowRight: () => look.pan(step, 0), ArrowUp: () => look.pan(0, -step), ArrowDown: () => look.pan(0, step),
    };
    const shifted: Record<string, () => void> = {
      ArrowLeft: () => look.brighten(0, 1 / 1.1), ArrowRight: () => look.brighten(0, 1.1), ArrowUp: () => look.brighten(0.05, 1), ArrowDown: () => look.brighten(-0.05, 1),
    };
    const act = (e.shiftKey ? shifted[e.key] : undefined) ?? keys[e.key];
    if (!act || e.ctrlKey || e.metaKey || e.altKey || e.defaultPrevented) return;
    e.preventDefault();
    act();
  };
  const onContextMenu = (e: { preventDefault: () => void }) => e.preventDefault();
  return { box, handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp, onKeyDown, onContextMenu } };
}

const sizeOf = (box: HTMLElement): Size => ({ width: box.clientWidth, height: box.clientHeight });
const between = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

function fromCorner(box: HTMLElement, e: { clientX: number; clientY: number }): Point {
  const r = box.getBoundingClientRect();
  return { x: e.clientX - r.left, y: e.clientY - r.top };
}
