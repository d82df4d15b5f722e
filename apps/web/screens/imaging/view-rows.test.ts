import type { BoardRow, DayBoard } from '#libs/contracts/screens/board';
import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { nextDog } from './next-dog.js';
import { besideFilm, nextRow, rowWords, viewRows, type Exposure } from './view-rows.js';

const film = (id: string, view: string, ...verdicts: ('accept' | 'retake')[]) =>
  ({ id, view, visit: 'v', disowned: false, verdicts: verdicts.map((verdict) => ({ study: 's', verdict, reasons: [] })) }) as unknown as Exposure;
const screenWith = (accepted: string[], ...exposures: Exposure[]) =>
  ({ exposures, studies: [{ id: 's', views: ['a', 'b', 'c'].map((view) => ({ view, name: view.toUpperCase(), required: view !== 'c', accepted: accepted.includes(view), checklist: [] })) }] }) as unknown as OrderScreen;
const visit = { id: 'v', studies: ['s'] } as unknown as VisitView;

describe('the views of a visit', () => {
  it('come next in their order, until one waits to be judged', () => {
    expect(nextRow(viewRows(screenWith([]), visit))?.view).toBe('a');
    expect(nextRow(viewRows(screenWith([], film('1', 'a')), visit))?.view).toBe('b');
  });

  it('are taken again first, and never asked for once all that must be are accepted', () => {
    const again = viewRows(screenWith([], film('1', 'a', 'retake')), visit);
    expect([nextRow(again)?.view, rowWords(again[0]!)]).toEqual(['a', 'to be taken again after attempt 1']);
    expect(nextRow(viewRows(screenWith(['a', 'b'], film('1', 'a', 'accept'), film('2', 'b', 'accept')), visit))).toBeUndefined();
  });

  it('wait for a verdict again when one was taken back', () => {
    const [row] = viewRows(screenWith([], film('1', 'a', 'retake'), film('2', 'a')), visit);
    expect(rowWords(row!)).toBe('to be judged, attempt 2');
  });

  it('hold a film beside the attempt before it, and the first beside the one after', () => {
    const [row] = viewRows(screenWith([], film('1', 'a', 'retake'), film('2', 'a')), visit);
    expect([besideFilm(row, row!.films[1]!)?.id, besideFilm(row, row!.films[0]!)?.id]).toEqual(['1', '2']);
  });
});

describe('the next dog', () => {
  const row = (order: string, step: string, ...staff: string[]) => ({ order, step, staff }) as unknown as BoardRow;
  const board = { rows: [row('home', 'home', 'Sef'), row('early', 'admitted', 'Sef'), row('now', 'sedated', 'Sef', 'Lio'), row('other', 'booked', 'Ada'), row('late', 'booked', 'Sef')] } as unknown as DayBoard;

  it('is the next later one of this person that is still to be imaged, else an earlier one that waits', () => {
    expect(nextDog(board, 'Sef', 'now')?.order).toBe('late');
    expect(nextDog(board, 'Sef', 'late')?.order).toBe('early');
    expect(nextDog(board, 'Lio', 'now')).toBeUndefined();
  });
});
