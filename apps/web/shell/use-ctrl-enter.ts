import { useEffect, useRef } from 'react';

/** Ctrl Enter sends the page's form, wherever the focus is. */
export function useCtrlEnter(send: () => void) {
  const latest = useRef(send);
  useEffect(() => {
    latest.current = send;
  });
  useEffect(() => {
    const pressed = (e: KeyboardEvent) => {
      if (e.key !== 'Enter' || !(e.ctrlKey || e.metaKey) || e.repeat) return;
      e.preventDefault();
      e.stopPropagation();
      latest.current();
    };
    // Caught on the way down: some controls keep their keys to themselves.
    window.addEventListener('keydown', pressed, true);
    return () => window.removeEventListener('keydown', pressed, true);
  }, []);
}
