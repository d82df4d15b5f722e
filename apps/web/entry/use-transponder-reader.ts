import { useEffect, useRef } from 'react';

type Stroke = { digit: string; at: number; field: HTMLInputElement | null; before: string };

/**
 * A handheld reader types like a very fast keyboard. Fifteen digits at that pace are a scan:
 * the field they landed in gets its text back, and the number goes to `onRead`. Nothing is submitted by it.
 */
export function useTransponderReader(onRead: (number: string) => void) {
  const latest = useRef(onRead);
  useEffect(() => {
    latest.current = onRead;
  });
  useEffect(() => {
    let strokes: Stroke[] = [];
    const pressed = (e: KeyboardEvent) => {
      if (e.repeat || e.isComposing || e.ctrlKey || e.altKey || e.metaKey) return;
      if ((e.key === 'Enter' || e.key === 'Tab') && isScan(strokes)) {
        e.preventDefault();
        e.stopImmediatePropagation();
        const read = strokes.slice(-15);
        restore(read[0]);
        latest.current(read.map((s) => s.digit).join(''));
        strokes = [];
        return;
      }
      // From the key's place, because some keyboards' layouts have other signs on the digit row.
      const digit = /^(?:Digit|Numpad)(\d)$/.exec(e.code)?.[1] ?? (/^\d$/.test(e.key) ? e.key : undefined);
      if (digit === undefined) {
        if (e.key !== 'Shift') strokes = [];
        return;
      }
      const field = e.target instanceof HTMLInputElement ? e.target : null;
      strokes = [...strokes.slice(-19), { digit, at: e.timeStamp, field, before: field?.value ?? '' }];
    };
    window.addEventListener('keydown', pressed, true);
    return () => window.removeEventListener('keydown', pressed, true);
  }, []);
}

/** Every gap at most 120 ms and 40 ms on average: no hand types so, and a busy machine still keeps up. */
export function isScan(strokes: readonly { at: number }[]): boolean {
  const tail = strokes.slice(-15);
  const first = tail[0];
  const last = tail.at(-1);
  if (tail.length < 15 || !first || !last) return false;
  return tail.every((s, i) => i === 0 || s.at - (tail[i - 1]?.at ?? 0) <= 120) && (last.at - first.at) / 14 <= 40;
}

function restore(first: Stroke | undefined) {
  if (!first?.field) return;
  // The framework keeps its own idea of the value; the native setter and an input event correct it.
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(first.field, first.before);
  first.field.dispatchEvent(new Event('input', { bubbles: true }));
}
