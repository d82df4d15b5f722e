import type { Action } from './actions.js';
import { type Move, studyMoves, visitMoves } from './roads.js';
import { type StudyStep, studySteps, type VisitStep, visitSteps } from './steps.js';
import { actionLabels, stepLabels } from './words.js';

const ROW = 96;
const TOP = 64;
const COLUMN = 640;
const INK = '#1b2230';
const SECOND = '#49525f';
const KNOT = 7;

/** The roads of a visit and of a study as one SVG picture, drawn from the tables that the code runs on. */
export function drawRoads(): string {
  const visit: VisitStep[] = [...visitSteps, 'home'];
  // `rejected` is the least advanced step, and still comes after a package has been out.
  const study: StudyStep[] = [...studySteps.filter((step) => step !== 'rejected' && step !== 'appealed'), 'reported', 'appealed', 'rejected'];
  const height = TOP + Math.max(visit.length, study.length) * ROW;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${2 * COLUMN} ${height}" font-family="Noto Sans, sans-serif" font-size="14" role="img">`,
    '<title>The roads of a visit and of a study</title>',
    `<rect width="${2 * COLUMN}" height="${height}" fill="#fbfbf8"/>`,
    ...road('Visit', 24, visit, visitMoves),
    ...road('Study', 24 + COLUMN, study, studyMoves),
    '</svg>',
  ].join('\n') + '\n';
}

function road<Step extends keyof typeof stepLabels>(title: string, x: number, steps: Step[], moves: readonly Move<Step>[]): string[] {
  const y = (place: number): number => TOP + place * ROW;
  const onward = (place: number): Move<Step> | undefined =>
    moves.find((move) => move.from.includes(steps[place] as Step) && move.to === steps[place + 1]);
  return [
    text(x, 30, title, 'font-size="19" font-weight="650"'),
    ...steps.flatMap((step, place) => {
      const next = onward(place);
      const side = moves.filter((move) => move.from.includes(step) && move !== next);
      return [
        ...(next ? [line(x + KNOT, y(place), y(place + 1)), text(x + 24, y(place) + ROW / 2 + 4, labels(next.by), '', SECOND)] : []),
        `<circle cx="${x + KNOT}" cy="${y(place)}" r="${KNOT}" fill="${INK}"/>`,
        text(x + 24, y(place) + 5, stepLabels[step], 'font-weight="650"'),
        ...side.map((move, row) =>
          text(x + 290, y(place) + 5 + row * 17, `${labels(move.by)} → ${stepLabels[move.to]}`, 'font-size="12.5"', SECOND)),
      ];
    }),
  ];
}

const labels = (actions: readonly Action[]): string => actions.map((action) => actionLabels[action]).join(', ');

const line = (x: number, from: number, to: number): string =>
  `<path d="M${x} ${from}V${to}" stroke="${INK}" stroke-width="3"/>`;

const text = (x: number, y: number, words: string, style: string, fill = INK): string =>
  `<text x="${x}" y="${y}" fill="${fill}" ${style}>${words.replace(/&/g, '&amp;').replace(/</g, '&lt;')}</text>`;
