import { ScienceError } from '../error.js';
import { standardError } from './second-look.js';
import type { JointReading, Protocol } from './types.js';

/** Measured in the room, per side in the value's unit, with the standard error of one side. */
export interface RoomEstimate {
  left: number;
  right: number;
  standardError: number;
}

export interface SidesAnswer {
  verdict: 'looksSwapped' | 'looksStraight' | 'differs' | 'cannotTell';
  /** For the veterinarian who checks the reading. */
  words: string;
}

/** Twenty to one before anything is said; our own choice, no source. */
const LIKELIER = Math.log(20);
/** 99.9% point of chi-square with 2 degrees of freedom: −2·ln(0.001). */
const FITS_NEITHER = -2 * Math.log(0.001);

/**
 * Whether left and right of a reading look exchanged against the estimate made in the room.
 * Both errors, the reading's and the estimate's, are taken as normal and independent.
 * When the hips are nearly alike this cannot be told, and that is the answer.
 * @throws ScienceError BAD_ESTIMATE when the estimate is not finite or its error is negative
 */
export function sidesSwapped(protocol: Protocol, reading: JointReading[], estimate: RoomEstimate): SidesAnswer {
  const { left, right, standardError: room } = estimate;
  if (![left, right, room].every(Number.isFinite) || room < 0) {
    throw new ScienceError('BAD_ESTIMATE', 'The room estimate needs a number for left, right and its error. Measure the film again.');
  }
  const read = { left: valueOf(reading, 'left'), right: valueOf(reading, 'right') };
  const { repeatability } = protocol;
  if (!repeatability.known) return { verdict: 'cannotTell', words: repeatability.reason };
  if (read.left === undefined || read.right === undefined) return { verdict: 'cannotTell', words: 'Only one side has a value, so the sides cannot be compared.' };

  const variance = standardError(repeatability.sd, repeatability.icc) ** 2 + room ** 2;
  const straight = ((read.left - left) ** 2 + (read.right - right) ** 2) / variance;
  const swapped = ((read.left - right) ** 2 + (read.right - left) ** 2) / variance;
  if (Math.min(straight, swapped) > FITS_NEITHER) {
    return { verdict: 'differs', words: 'The reading is far from the room estimate on either side. Check the dog, the film and the digits.' };
  }
  const evidence = (straight - swapped) / 2;
  if (evidence > LIKELIER) return { verdict: 'looksSwapped', words: 'Left and right look exchanged against the room estimate. Ask the reader before accepting.' };
  if (evidence < -LIKELIER) return { verdict: 'looksStraight', words: 'Left and right agree with the room estimate.' };
  return { verdict: 'cannotTell', words: 'The two sides are too alike to tell whether they were exchanged.' };
}

function valueOf(reading: JointReading[], side: 'left' | 'right'): number | undefined {
  const value = reading.find(({ joint }) => joint === side)?.value;
  return typeof value === 'number' ? value : undefined;
}
