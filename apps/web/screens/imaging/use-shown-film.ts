import { useState } from 'react';
import type { Exposure } from './view-rows.js';

/** The picture that is looked at. One that arrives shows by itself, unless hands are busy with the one that is there. */
export function useShownFilm(films: readonly Exposure[], busy: boolean) {
  const newest = films.at(-1)?.id;
  const [chosen, choose] = useState<string>();
  const [seen, setSeen] = useState(newest);
  const arrived = newest !== undefined && newest !== seen;
  if (arrived && !busy) {
    setSeen(newest);
    choose(newest);
  }
  const open = films.find((f) => f.id === chosen) ?? films.findLast((f) => f.verdicts.length === 0) ?? films.at(-1);
  const show = (id: string) => {
    if (id === newest) setSeen(newest);
    choose(id);
  };
  return { film: open, show, arrived: arrived && busy ? films.at(-1) : undefined };
}
