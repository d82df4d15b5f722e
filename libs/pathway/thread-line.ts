import type { Hold } from './evaluation.js';

export type KnotState = 'done' | 'here' | 'toCome' | 'sentBack' | 'ended' | 'held';
export interface Knot<Name extends string = string> { name: Name; state: KnotState; at?: string; note?: string }

export interface ThreadLine<Name extends string = string> {
  id: string;
  knots: Knot<Name>[];
  /** The first hold for which a person is waited for; it stands beside the knot that is `held`. */
  hold: Hold | null;
  over: boolean;
  /** Exposures made again. */
  retakes: number;
  /** The whole line for a screen reader. */
  sentence: string;
}

export interface VisitLine extends ThreadLine<VisitKnot> { day?: string }
export interface StudyLine extends ThreadLine<StudyKnot> {
  /** The visit at whose pictures its road begins. */
  fromVisit: string | null;
  /** It has a film and has never been sent. */
  imagedNotSent: boolean;
}

export interface Thread { visits: VisitLine[]; studies: StudyLine[]; over: boolean; sentence: string }

export const visitKnotNames = ['booked', 'consent', 'admitted', 'sedated', 'imaged', 'recovered', 'goneHome'] as const;
export const studyKnotNames = ['checked', 'sent', 'received', 'read', 'accepted', 'reported'] as const;
export type VisitKnot = (typeof visitKnotNames)[number];
export type StudyKnot = (typeof studyKnotNames)[number];
