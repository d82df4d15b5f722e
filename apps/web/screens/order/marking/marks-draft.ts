import type { Point } from '#libs/science/measurement/plane';
import type { SavedMarks } from '#libs/contracts/screens/marks';
import { pointsIn, setOf, slotsOf, type MarkSlot, type SetPoints } from './mark-slots.js';

export interface Draft {
  view: string;
  set: SetPoints;
  /** What is being marked, and which of its points is chosen. */
  at: string;
  chosen: number | null;
  /** Every state before, the last one last. */
  past: SetPoints[];
  /** What was last kept on the server. */
  kept: SetPoints;
  /** Whose points the server gave, and when they were set. */
  opened?: { by: string; at: string } | undefined;
}

type Saved = NonNullable<SavedMarks['saved']>;

export type Change =
  | { do: 'choose'; at: string; point?: number | null }
  | { do: 'add'; at: Point }
  /** Of the chosen point; `from` begins a drag, which is undone as one. */
  | { do: 'move'; to: Point; first: boolean }
  | { do: 'nudge'; dx: number; dy: number }
  | { do: 'remove' }
  | { do: 'undo' }
  | { do: 'reset' }
  | { do: 'kept'; set: SetPoints }
  | { do: 'open'; saved: Saved };

const NONE: SetPoints = {};
export const newDraft = (view: string): Draft => ({ view, set: NONE, at: slotsOf(view)[0]?.key ?? '', chosen: null, past: [], kept: NONE });
export const isDirty = ({ set, kept }: Draft): boolean => set !== kept && Object.values(set).some((points) => points.length > 0);

/** The points of a film as they are set, one change after the other; nothing before is lost until the film is left. */
export function changed(draft: Draft, change: Change): Draft {
  const points = pointsIn(draft.set, draft.at);
  const put = (next: readonly Point[], chosen: number | null, set = draft.set): Draft => ({ ...draft, set: { ...set, [draft.at]: next }, chosen, past: [...draft.past, draft.set] });
  switch (change.do) {
    case 'choose': return { ...draft, at: change.at, chosen: change.point ?? null };
    case 'add': return add(draft, change.at);
    case 'move': {
      if (draft.chosen === null) return draft;
      const moved = put(points.map((p, i) => (i === draft.chosen ? change.to : p)), draft.chosen);
      return change.first ? moved : { ...moved, past: draft.past };
    }
    case 'nudge': return draft.chosen === null ? draft : put(points.map((p, i) => (i === draft.chosen ? { x: p.x + change.dx, y: p.y + change.dy } : p)), draft.chosen);
    case 'remove': {
      const gone = draft.chosen ?? points.length - 1;
      return points.length === 0 ? draft : put(points.filter((_, i) => i !== gone), null);
    }
    case 'undo': return draft.past.length === 0 ? draft : { ...draft, set: draft.past.at(-1)!, past: draft.past.slice(0, -1), chosen: null };
    case 'reset': return Object.keys(draft.set).length === 0 ? draft : { ...draft, set: {}, chosen: null, past: [...draft.past, draft.set], at: newDraft(draft.view).at };
    case 'kept': return { ...draft, kept: change.set, opened: undefined };
    case 'open': return opened(draft, change.saved);
  }
}

/** Not over what somebody has begun to set here in the meantime; what is begun and not finished stays. */
function opened(draft: Draft, { marks, by, at }: Saved): Draft {
  if (draft.set !== draft.kept) return draft;
  const begun = slotsOf(draft.view).flatMap(({ key, rule }) => {
    const points = pointsIn(draft.set, key);
    return points.length > 0 && points.length < rule.atLeast ? [[key, points] as const] : [];
  });
  const set = { ...Object.fromEntries(begun), ...setOf(marks) };
  return { ...draft, set, kept: set, opened: { by, at } };
}

/** A mark that has all its points makes way for the next one; of the two side markers only one lies in a picture. */
function add(draft: Draft, point: Point): Draft {
  const slots = slotsOf(draft.view);
  const slot = slots.find(({ key }) => key === draft.at);
  if (!slot) return draft;
  const full = pointsIn(draft.set, draft.at).length >= slot.rule.atMost;
  if (full && slot.rule.atMost > 2) return draft;
  const points = full ? [point] : [...pointsIn(draft.set, draft.at), point];
  const others = slot.rule.kind === 'marker' ? Object.fromEntries(slots.filter((s) => s.rule.kind === 'marker').map((s) => [s.key, []])) : {};
  const done = { ...draft, set: { ...draft.set, ...others, [draft.at]: points }, past: [...draft.past, draft.set], chosen: points.length - 1 };
  return points.length === slot.rule.atMost ? { ...done, ...nextAfter(slots, done) } : done;
}

function nextAfter(slots: readonly MarkSlot[], draft: Draft): Pick<Draft, 'at' | 'chosen'> {
  const here = slots.findIndex(({ key }) => key === draft.at);
  const next = [...slots.slice(here + 1), ...slots.slice(0, here)].find(({ key, rule }) => pointsIn(draft.set, key).length < rule.atLeast && !(rule.kind === 'marker' && slots[here]!.rule.kind === 'marker'));
  return next ? { at: next.key, chosen: null } : { at: draft.at, chosen: draft.chosen };
}
