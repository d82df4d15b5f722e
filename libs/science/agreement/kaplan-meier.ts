import { ScienceError } from '../error.js';
import { type Interval, Z95 } from '../population/wilson.js';

/** How long a case took, or has been open. */
export interface Case { time: number; closed: boolean }

export interface Step {
  time: number;
  /** Cases that were open until then. */
  atRisk: number;
  closed: number;
  /** Share that is still open after it, 0 to 1. */
  open: number;
  standardError: number;
  /** 95 % interval of `open`; null where all have closed. */
  mayBe: Interval | null;
}

export interface Curve {
  n: number;
  stillOpen: number;
  /** Times at which cases closed, in order. */
  steps: Step[];
  /** Times at which open cases were last seen, in order. */
  openAt: number[];
}

/**
 * How long cases take, with the open ones in: a mean of the closed alone says that things go fast as long as the slow
 * ones are not done. Standard error by Greenwood, interval on the log-log scale.
 * Source: Kaplan & Meier, J Am Stat Assoc 1958;53:457-481 (from memory); checked on Freireich et al. Blood 1963;21:699-716.
 * @param cases times of 0 or more in any unit
 * @throws ScienceError NO_CASES, NOT_A_TIME
 */
export function kaplanMeier(cases: readonly Case[]): Curve {
  if (cases.length === 0) throw new ScienceError('NO_CASES', 'There are no cases yet, so there is no time to show.');
  const bad = cases.find(({ time }) => !(time >= 0 && time < Infinity));
  if (bad) throw new ScienceError('NOT_A_TIME', `${bad.time} is not how long a case took. Give 0 or more.`);
  const times = [...new Set(cases.filter(({ closed }) => closed).map(({ time }) => time))].sort((a, b) => a - b);
  let [open, greenwood] = [1, 0];
  const steps = times.map((time): Step => {
    const atRisk = cases.filter((c) => c.time >= time).length;
    const closed = cases.filter((c) => c.closed && c.time === time).length;
    open *= 1 - closed / atRisk;
    greenwood += closed / (atRisk * (atRisk - closed));
    const standardError = open === 0 ? 0 : open * Math.sqrt(greenwood);
    return { time, atRisk, closed, open, standardError, mayBe: logLog(open, greenwood) };
  });
  const openAt = cases.filter(({ closed }) => !closed).map(({ time }) => time).sort((a, b) => a - b);
  return { n: cases.length, stillOpen: openAt.length, steps, openAt };
}

/**
 * The time by which a share of the cases has closed, and its interval; null for what has not been reached.
 * @param share 0 < share < 1, 0.5 for the median
 * @throws ScienceError NOT_A_PROBABILITY
 */
export function timeUntil({ steps }: Curve, share: number): { time: number | null; lower: number | null; upper: number | null } {
  if (!(share > 0 && share < 1)) throw new ScienceError('NOT_A_PROBABILITY', `${share} is not a share of the cases. Give a number between 0 and 1.`);
  const first = (open: (step: Step) => number) => steps.find((step) => open(step) <= 1 - share + 1e-12)?.time ?? null;
  return { time: first((s) => s.open), lower: first((s) => s.mayBe?.lower ?? s.open), upper: first((s) => s.mayBe?.upper ?? s.open) };
}

function logLog(open: number, greenwood: number): Interval | null {
  if (open === 0 || open === 1) return null;
  const half = (Z95 * Math.sqrt(greenwood)) / Math.abs(Math.log(open));
  return { lower: open ** Math.exp(half), upper: open ** Math.exp(-half) };
}
