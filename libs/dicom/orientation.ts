import type { DataSet } from 'dicom-parser';

export type Direction = 'left' | 'right' | 'head' | 'tail' | 'back' | 'belly' | 'nose' | 'midline' | 'outside' | 'body' | 'toes' | 'palm' | 'sole';

export interface Orientation {
  /** Which way of the dog the picture's right edge points to, and its lower edge. */
  right: Direction;
  foot: Direction;
  /** The machine was set up for people, and its letters are taken over for the dog. */
  asOfPeople: boolean;
}

/** DICOM PS3.3 C.7.6.1.1.1: L is lateral and R rostral in a quadruped, left and right in a biped; who does not say is a biped. */
const QUADRUPED: Record<string, Direction> = { LE: 'left', RT: 'right', CR: 'head', CD: 'tail', D: 'back', V: 'belly', R: 'nose', M: 'midline', L: 'outside', PR: 'body', DI: 'toes', PA: 'palm', PL: 'sole' };
/** Of the trunk alone: a person's front is a dog's belly. */
const BIPED: Record<string, Direction> = { L: 'left', R: 'right', H: 'head', F: 'tail', P: 'back', A: 'belly' };

/** Which way up the file says the picture is; a mark in the picture itself goes before it. Undefined where the file says nothing, or what nobody can mean. */
export function orientationOf(data: DataSet): Orientation | undefined {
  const asOfPeople = data.string('x00102210')?.trim() !== 'QUADRUPED';
  const letters = asOfPeople ? BIPED : QUADRUPED;
  const [right, foot] = (data.string('x00200020') ?? '').split('\\').map((value) => main(value.trim(), letters));
  return right && foot ? { right, foot, asOfPeople } : undefined;
}

/** The first of several directions is the one that it points to most. */
function main(value: string, letters: Record<string, Direction>): Direction | undefined {
  return letters[value.slice(0, 2)] ?? letters[value.slice(0, 1)];
}

/** The letters for a quadruped, of the picture's right and its lower edge. */
export const lettersFor = (...edges: [right: Direction, lower: Direction]): [string, string] =>
  edges.map((edge) => Object.keys(QUADRUPED).find((letters) => QUADRUPED[letters] === edge)!) as [string, string];
