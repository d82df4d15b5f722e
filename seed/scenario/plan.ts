import type { Answer, Question } from '#libs/contracts/common';
import type { CentreKey } from '../centre.js';
import type { Road } from '../roads/road.js';
import type { DemoDays } from './demo-days.js';

/** One order of the demo: when it is booked, for when, and what happens then. */
export interface Plan {
  dog: string;
  studies: [protocol: string, centre: CentreKey][];
  /** Of today: lane of the house and minutes from now. Else days from today, a working day. */
  visit: { lane: number; inMinutes: number } | { inDays: number };
  /** Minutes before now instead of days before the visit. */
  bookedMinutesAgo?: number;
  answers?: Partial<Record<Question, Answer>>;
  accepted?: boolean;
  play: (road: Road, days: DemoDays) => Promise<unknown>;
}

export const laxity: Plan['studies'][number] = ['hipLaxity', 'threnfold'];
export const loaded: Plan['studies'][number] = ['hipLoaded', 'threnfold'];
export const extended: Plan['studies'][number] = ['hipExtended', 'threnfold'];
export const elbows: Plan['studies'][number] = ['elbow', 'threnfold'];
