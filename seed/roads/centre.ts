import type { Joint } from '#libs/contracts/common';
import type { Actor } from '#libs/steps/record/actor';
import { deliverPost } from './post.js';
import { perform, type Road } from './road.js';

/** The reader whose eyes this order has; by number, so that an appeal goes to another one. */
export function readerOf(road: Road, study: string, number = 0): Actor {
  const centre = Object.values(road.driver.scheme.centres).find((c) => c.id === road.evaluation.studies[study]!.centre)!;
  return { ...centre.readers[number % centre.readers.length]!, roles: ['reader'], practice: road.house.id };
}

/** Sealed and sent; the mail with the link arrives, or is left to the worker. */
export async function dispatch(road: Road, study: string, { arrives = true } = {}): Promise<void> {
  await perform(road, road.house.desk, 'seal', study, {});
  road.clock.advance({ minutes: 3 });
  await perform(road, road.house.desk, 'send', study, {});
  if (arrives) await deliverPost(road);
}

export async function acknowledge(road: Road, study: string): Promise<void> {
  await perform(road, readerOf(road, study), 'acknowledge', study, {});
}

const both = (left: Omit<Joint, 'joint'>, right: Omit<Joint, 'joint'>): Joint[] => [{ joint: 'left', ...left }, { joint: 'right', ...right }];

const unchanged = { osteophytes: 'none', sclerosis: 'none', primaryLesion: 'absent' };
/** Readings of the demo, invented; those of the loose hips are what the films were drawn with. */
export const readings: Record<string, Joint[]> = {
  hipLaxity: both({ value: 0.38 }, { value: 0.44 }),
  hipLoaded: both({ value: 3.2 }, { value: 4.1 }),
  hipExtended: both({ value: 'A2', findings: { criteria: '2022', norbergAngle: 106.5 } }, { value: 'B1', findings: { criteria: '2022', norbergAngle: 103 } }),
  elbow: both({ value: '0', findings: unchanged }, { value: '0', findings: unchanged }),
};

export interface Reading { joints?: Joint[]; ref?: string; comment?: string; reader?: number }

/** The reader signs what the films show. */
export async function enterResult(road: Road, study: string, { joints, ref, comment, reader }: Reading = {}): Promise<void> {
  const { protocol } = road.evaluation.studies[study]!;
  const readOn = road.clock.now().toISOString().slice(0, 10);
  await perform(road, readerOf(road, study, reader), 'enterResult', study, {
    ref: ref ?? `R-${road.accession.slice(-7)}-${protocol}`, channel: 'page', joints: joints ?? readings[protocol]!, dogNumber: road.dog.transponder, readOn, ...(comment ? { comment } : {}),
  });
}
