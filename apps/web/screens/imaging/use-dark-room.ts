import { useEffect, useState } from 'react';

const KEPT = 'cotyla-imaging-light';

/** Dark, whatever the desk outside likes, until somebody in this room asks for light. */
export function useDarkRoom(): { dark: boolean; change: () => void } {
  const [dark, setDark] = useState(() => localStorage.getItem(KEPT) !== 'yes');
  useEffect(() => {
    document.documentElement.dataset.room = dark ? 'dark' : 'light';
    return () => {
      delete document.documentElement.dataset.room;
    };
  }, [dark]);
  const change = () => {
    localStorage.setItem(KEPT, dark ? 'yes' : 'no');
    setDark(!dark);
  };
  return { dark, change };
}
