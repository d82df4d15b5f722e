import { drawRoads } from './draw-roads.js';
import { isOpenStudy, isOpenVisit, studySteps, visitSteps } from './steps.js';
import { studyMoves, visitMoves } from './roads.js';

describe('the picture of the roads', () => {
  it('shows every step and nothing unreadable', () => {
    const svg = drawRoads();
    expect(svg).toContain('Being imaged');
    expect(svg).toContain('Gone home');
    expect(svg).toContain('Turn away → Turned away');
    expect(svg).not.toMatch(/undefined|NaN/);
  });

  it('has a way on from every open step', () => {
    expect(visitSteps.filter((step) => !visitMoves.some((move) => move.from.includes(step)))).toEqual([]);
    expect(studySteps.filter((step) => !studyMoves.some((move) => move.from.includes(step)))).toEqual([]);
  });

  it('leads into every step but the first', () => {
    const into = [...visitMoves.map((move) => move.to), ...studyMoves.map((move) => move.to)];
    expect([...visitSteps, ...studySteps].filter((step) => !into.includes(step))).toEqual(['wanted', 'asked']);
    expect(into.some((step) => !isOpenVisit(step as 'home') && !isOpenStudy(step as 'ended'))).toBe(true);
  });
});
