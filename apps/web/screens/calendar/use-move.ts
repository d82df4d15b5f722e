import { useState, type KeyboardEvent, type PointerEvent } from 'react';
import type { CalendarVisit } from '#libs/contracts/calendar';
import { STEP, minutesOf, startAt, timeOf, type Hours } from './grid.js';
import { t } from '../../words/t.js';

/** A column of the calendar: a room, an operator or a day. */
export interface Lane { key: string; name: string; day: string; open: boolean; room?: string; operator?: string; note?: string }
/** Where a visit is being moved to, before anybody is asked. */
export interface Ghost { visit: CalendarVisit; lane: number; start: number }
export interface Target { visit: CalendarVisit; day: string; start: string; room?: string; operator?: string }

/** With less than this the hand only trembled, and it was a press. */
const TREMBLE = 5;
export const PIXELS_PER_MINUTE = 1.4;

interface Held { visit: CalendarVisit; x: number; y: number; offset: number; moved: boolean }

/**
 * Picking a visit up with the mouse or the space bar and setting it down elsewhere. The element that is dragged stays where
 * it is: a browser lets go of the pointer when its element changes parents.
 */
export function useMove(lanes: readonly Lane[], hours: Hours, onDrop: (target: Target) => void) {
  const [held, setHeld] = useState<Held>();
  const [ghost, setGhost] = useState<Ghost>();
  const [said, setSaid] = useState('');
  const stop = (words = '') => {
    setHeld(undefined);
    setGhost(undefined);
    setSaid(words);
  };
  const drop = (g: Ghost) => {
    const { day, room, operator } = lanes[g.lane]!;
    stop();
    onDrop({ visit: g.visit, day, start: timeOf(g.start), ...(room && { room }), ...(operator && { operator }) });
  };
  const show = (g: Ghost) => {
    setGhost(g);
    setSaid(`${g.visit.dog}: ${lanes[g.lane]!.name}, ${timeOf(g.start)}`);
  };
  const columnAt = (x: number) => [...document.querySelectorAll<HTMLElement>('[data-lane]')].find((c) => { const r = c.getBoundingClientRect(); return x >= r.left && x < r.right; });

  const pointer = (visit: CalendarVisit) => ({
    onPointerDown(e: PointerEvent<HTMLElement>) {
      // A finger scrolls the page; it presses the visit and says in the dialog where to.
      if (!visit.movable || e.button !== 0 || e.pointerType === 'touch') return;
      e.currentTarget.setPointerCapture(e.pointerId);
      setHeld({ visit, x: e.clientX, y: e.clientY, offset: e.clientY - e.currentTarget.getBoundingClientRect().top, moved: false });
    },
    onPointerMove(e: PointerEvent<HTMLElement>) {
      if (!held || held.visit !== visit) return;
      if (!held.moved && Math.hypot(e.clientX - held.x, e.clientY - held.y) < TREMBLE) return;
      setHeld({ ...held, moved: true });
      const column = columnAt(e.clientX);
      if (!column) return;
      show({ visit, lane: Number(column.dataset['lane']), start: startAt(e.clientY - column.getBoundingClientRect().top - held.offset, PIXELS_PER_MINUTE, hours, visit.minutes) });
    },
    onPointerUp() {
      if (held?.moved && ghost) drop(ghost);
      else stop();
    },
    onPointerCancel: () => stop(),
  });

  const keys = (visit: CalendarVisit, lane: number) => (e: KeyboardEvent<HTMLElement>) => {
    if (!visit.movable) return;
    if (!ghost) {
      if (e.key !== ' ') return;
      e.preventDefault();
      setGhost({ visit, lane, start: minutesOf(visit.start) });
      return setSaid(t('{dog} is picked up. Arrow keys move, Enter sets down, Escape leaves it where it was.', { dog: visit.dog }));
    }
    const to = moved(ghost, e.key);
    if (!to && !['Enter', ' ', 'Escape'].includes(e.key)) return;
    e.preventDefault();
    if (e.key === 'Escape') stop(t('{dog} stays where it was.', { dog: visit.dog }));
    else if (to) show(to);
    else drop(ghost);
  };

  function moved(g: Ghost, key: string): Ghost | undefined {
    const at = (lane: number, start: number): Ghost => ({ ...g, lane: Math.min(Math.max(lane, 0), lanes.length - 1), start: Math.min(Math.max(start, hours.from), hours.to - g.visit.minutes) });
    const along = document.documentElement.dir === 'rtl' ? -1 : 1;
    if (key === 'ArrowUp') return at(g.lane, g.start - STEP);
    if (key === 'ArrowDown') return at(g.lane, g.start + STEP);
    if (key === 'ArrowLeft') return at(g.lane - along, g.start);
    if (key === 'ArrowRight') return at(g.lane + along, g.start);
    return undefined;
  }

  return { ghost, said, pointer, keys, dragged: held?.moved ?? false };
}
