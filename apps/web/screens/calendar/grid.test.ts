import { hoursShown, sideBySide, startAt, timeOf } from './grid.js';

const at = (start: string, minutes = 45) => ({ start, minutes });

it('a place in a column is a quarter of an hour, and the visit stays inside the day', () => {
  const hours = { from: 480, to: 960 };
  expect([0, 29, 31, 10_000, -50].map((y) => timeOf(startAt(y, 2, hours, 45)))).toEqual(['08:00', '08:15', '08:15', '15:15', '08:00']);
});

it('hours are whole and hold a visit that lies outside them', () => {
  expect(hoursShown('08:30', '15:45', [])).toEqual({ from: 480, to: 960 });
  expect(hoursShown('08:00', '16:00', [at('07:10'), at('16:30')])).toEqual({ from: 420, to: 1080 });
});

it('visits at one time stand side by side, and a lane is used again when it is free', () => {
  const laid = sideBySide([at('09:00'), at('09:00'), at('09:45'), at('11:00')]);
  expect(laid.map((l) => [l.visit.start, l.lane, l.lanes])).toEqual([['09:00', 0, 2], ['09:00', 1, 2], ['09:45', 0, 1], ['11:00', 0, 1]]);
});

it('a long visit beside two short ones keeps its lane', () => {
  expect(sideBySide([at('09:00', 120), at('09:00', 45), at('09:45', 45)]).map((l) => [l.lane, l.lanes])).toEqual([[0, 2], [1, 2], [1, 2]]);
});
