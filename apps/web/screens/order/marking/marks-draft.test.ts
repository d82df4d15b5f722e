import { marksOf, slotsOf, unfinished } from './mark-slots.js';
import { changed, isDirty, newDraft, type Change, type Draft } from './marks-draft.js';

const after = (draft: Draft, ...changes: Change[]) => changes.reduce(changed, draft);
const at = (x: number, y: number): Change => ({ do: 'add', at: { x, y } });
const start = newDraft('vdDistraction');

describe('points set on a film', () => {
  it('begin with the left head and go where they are clicked', () => {
    const draft = after(start, at(1, 2), at(3, 4));
    expect([draft.at, draft.set['head left'], draft.chosen]).toEqual(['head left', [{ x: 1, y: 2 }, { x: 3, y: 4 }], 1]);
    expect(unfinished(slotsOf('vdDistraction'), draft.set)).toEqual(['Head, left: 1 more point.']);
    expect(marksOf(slotsOf('vdDistraction'), draft.set)).toEqual([]);
    expect(marksOf(slotsOf('vdDistraction'), after(draft, at(5, 5)).set)).toEqual([{ kind: 'head', side: 'left', points: [{ x: 1, y: 2 }, { x: 3, y: 4 }, { x: 5, y: 5 }] }]);
  });

  it('are moved, nudged and removed one at a time', () => {
    const draft = after(start, at(1, 2), at(3, 4), { do: 'choose', at: 'head left', point: 0 }, { do: 'nudge', dx: 1, dy: 0 }, { do: 'move', to: { x: 9, y: 9 }, first: true });
    expect(draft.set['head left']).toEqual([{ x: 9, y: 9 }, { x: 3, y: 4 }]);
    expect(changed(draft, { do: 'remove' }).set['head left']).toEqual([{ x: 3, y: 4 }]);
  });

  it('open with what was kept, until somebody has begun to set others here', () => {
    const saved = { marks: [{ kind: 'head', side: 'left' as const, points: [{ x: 1, y: 1 }, { x: 2, y: 2 }, { x: 3, y: 1 }] }, { kind: 'midline', points: [{ x: 5, y: 0 }, { x: 5, y: 9 }] }], by: 'A. Person', at: '2027-03-01T09:00:00Z' };
    const open: Change = { do: 'open', saved };
    const draft = after(start, open);
    expect([draft.set, draft.opened, isDirty(draft)]).toEqual([{ 'head left': saved.marks[0]!.points, midline: saved.marks[1]!.points }, { by: 'A. Person', at: saved.at }, false]);
    expect(marksOf(slotsOf('vdDistraction'), draft.set)).toEqual(expect.arrayContaining(saved.marks));
    const anew = after(draft, { do: 'reset' });
    expect([anew.set, after(anew, open).set]).toEqual([{}, {}]);
    const own = after(start, at(7, 7));
    expect(after(own, open).set).toEqual(own.set);
    // Kept by oneself, with a rim just begun: the rim stays when the kept points come back.
    const begun = after(start, { do: 'choose', at: 'socket right' }, at(4, 4));
    expect(after(begun, { do: 'kept', set: begun.set }, open).set).toMatchObject({ 'socket right': [{ x: 4, y: 4 }], 'head left': saved.marks[0]!.points });
  });

  it('come back step by step, a whole drag as one step, a reset too', () => {
    const two = after(start, at(1, 2), at(3, 4));
    const dragged = after(two, { do: 'move', to: { x: 5, y: 5 }, first: true }, { do: 'move', to: { x: 6, y: 6 }, first: false });
    expect(dragged.set['head left']![1]).toEqual({ x: 6, y: 6 });
    expect(changed(dragged, { do: 'undo' }).set).toEqual(two.set);
    const wiped = changed(two, { do: 'reset' });
    expect(wiped.set).toEqual({});
    expect(changed(wiped, { do: 'undo' }).set).toEqual(two.set);
    expect(changed(start, { do: 'undo' })).toBe(start);
  });

  it('lead on to the next mark where no more points are wanted, and a third one begins a pair anew', () => {
    const width = after(start, { do: 'choose', at: 'foramen left' }, at(1, 1), at(2, 2));
    expect([width.at, width.chosen]).toEqual(['foramen right', null]);
    expect(after(width, { do: 'choose', at: 'foramen left' }, at(7, 7)).set['foramen left']).toEqual([{ x: 7, y: 7 }]);
  });

  it('hold one side marker', () => {
    const draft = after(start, { do: 'choose', at: 'marker left' }, at(1, 1), { do: 'choose', at: 'marker right' }, at(2, 2));
    expect(marksOf(slotsOf('vdDistraction'), draft.set)).toEqual([{ kind: 'marker', side: 'right', points: [{ x: 2, y: 2 }] }]);
  });

  it('know whether they have been kept', () => {
    const draft = after(start, at(1, 1));
    expect([isDirty(start), isDirty(draft), isDirty(changed(draft, { do: 'kept', set: draft.set }))]).toEqual([false, true, false]);
  });
});
