import { useEffect, useRef } from 'react';

/** A single key, while nobody is typing and no dialog is open. */
export function useShortcut(key: string, act: () => void) {
  const latest = useRef(act);
  useEffect(() => {
    latest.current = act;
  });
  useEffect(() => {
    const pressed = (e: KeyboardEvent) => {
      if (e.key.toLowerCase() !== key || e.ctrlKey || e.metaKey || e.altKey || e.repeat || e.defaultPrevented) return;
      if (isTyping(e.target) || document.querySelector('[role=dialog]')) return;
      e.preventDefault();
      latest.current();
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [key]);
}

const isTyping = (target: EventTarget | null) => target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable=true], [role=radiogroup], [role=listbox], [role=spinbutton]') !== null;
