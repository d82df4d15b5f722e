import { useCallback, useEffect, useRef, useState, type PointerEvent } from 'react';
import type { Point } from '#libs/science/measurement/plane';
import { middleOf, moved, nearer, pixelsPerDot, wholePicture, type PictureView, type Size } from '../../../film/picture-view.js';

/** Dots of the screen that a hand may tremble between down and up and still mean one place. */
const TREMBLE = 4;

type Held = { at: Point; screen: Point; what: 'ground' | 'point'; moving: boolean };

/** The part that is looked at, where something else looks at it too. */
export type SharedView = { view: PictureView; setView: (next: (view: PictureView) => PictureView) => void };

/** Wheel, drag and click on a picture that is drawn in its own pixels. */
export function usePicture(picture: Size, on: { click: (at: Point) => void; drag: (to: Point, first: boolean) => void }, shared?: SharedView) {
  const own = useState(() => wholePicture(picture));
  const [view, setView] = shared ? [shared.view, shared.setView] : own;
  const [box, setBox] = useState<Size>(picture);
  const svg = useRef<SVGSVGElement>(null);
  const held = useRef<Held | null>(null);

  useEffect(() => {
    const element = svg.current;
    if (!element) return;
    const watch = new ResizeObserver(() => setBox({ width: element.clientWidth, height: element.clientHeight }));
    watch.observe(element);
    // React's own wheel listener is passive and could not keep the page from scrolling.
    const onWheel = (e: WheelEvent) => {
      e.preventDefault();
      e.stopPropagation();
      const about = placeOf(element, e);
      setView((v) => nearer(v, Math.exp(-e.deltaY / 400), about, picture));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => {
      watch.disconnect();
      element.removeEventListener('wheel', onWheel);
    };
  }, [picture, setView]);

  const zoom = useCallback((by: number) => setView((v) => nearer(v, by, middleOf(v), picture)), [picture, setView]);
  const whole = useCallback(() => setView(() => wholePicture(picture)), [picture, setView]);
  const shown = useRef(view);
  useEffect(() => {
    shown.current = view;
  }, [view]);
  const middle = useCallback(() => middleOf(shown.current), []);

  const onPointerDown = (e: PointerEvent<SVGSVGElement>) => {
    // With Shift, or the other button, a drag is not about points.
    if (e.button !== 0 || e.shiftKey) return;
    e.stopPropagation();
    e.currentTarget.setPointerCapture(e.pointerId);
    const what = (e.target as Element).closest('[data-point]') ? 'point' : 'ground';
    held.current = { at: placeOf(e.currentTarget, e), screen: { x: e.clientX, y: e.clientY }, what, moving: false };
  };
  const onPointerMove = (e: PointerEvent<SVGSVGElement>) => {
    const now = held.current;
    if (!now) return;
    e.stopPropagation();
    const far = Math.hypot(e.clientX - now.screen.x, e.clientY - now.screen.y) > TREMBLE;
    if (!now.moving && !far) return;
    const first = !now.moving;
    now.moving = true;
    const at = placeOf(e.currentTarget, e);
    if (now.what === 'point') on.drag(at, first);
    else setView((v) => moved(v, now.at.x - at.x, now.at.y - at.y, picture));
  };
  const onPointerUp = (e: PointerEvent<SVGSVGElement>) => {
    const now = held.current;
    held.current = null;
    if (now && now.what === 'ground' && !now.moving && e.type === 'pointerup') on.click(now.at);
  };

  return {
    view, svg,
    dot: pixelsPerDot(view, box),
    zoom, whole, middle,
    pan: (dx: number, dy: number) => setView((v) => moved(v, dx * v.width, dy * v.height, picture)),
    handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp },
  };
}

function placeOf(svg: SVGSVGElement, e: { clientX: number; clientY: number }): Point {
  const { x, y } = new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM()!.inverse());
  return { x, y };
}
