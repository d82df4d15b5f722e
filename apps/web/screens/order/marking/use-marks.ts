import { useEffect, useMemo, useReducer } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { evaluateMarks } from '#libs/science/measurement/evaluate-marks';
import { marksOf, slotsOf, unfinished } from './mark-slots.js';
import { changed, isDirty, newDraft, type Draft } from './marks-draft.js';

export type Exposure = OrderScreen['exposures'][number];
export type MarkedFilm = ReturnType<typeof useMarks>;

/** Points that are being set and not kept yet stay with their film while this page is open. */
const drafts = new Map<string, Draft>();

export function useMarks(film: Exposure | undefined) {
  const [draft, change] = useReducer(changed, undefined, () => (film && drafts.get(film.id)) ?? newDraft(film?.view ?? ''));
  useEffect(() => {
    if (film) drafts.set(film.id, draft);
  }, [film, draft]);
  const slots = useMemo(() => slotsOf(draft.view), [draft.view]);
  const marks = useMemo(() => marksOf(slots, draft.set), [slots, draft.set]);
  const picture = film?.picture;
  const found = useMemo(() => (marks.length > 0 && picture ? evaluateMarks({ view: draft.view, picture: pictureOf(picture), marks }) : undefined), [draft.view, marks, picture]);
  return { draft, change, slots, marks, found, missing: unfinished(slots, draft.set), dirty: isDirty(draft) };
}

const pictureOf = ({ width, height, spacing }: NonNullable<Exposure['picture']>) => ({ width, height, ...(spacing ? { spacing } : {}) });
