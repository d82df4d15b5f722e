import { instantOf } from '#libs/steps/record/local-time';
import { acknowledge, dispatch, enterResult, type Reading } from './centre.js';
import { consentTo } from './consent-to.js';
import { endImaging, imageViews, type Imaging } from './image-views.js';
import { acceptAndRelease } from './letter.js';
import { factsOf, laterDays, type Road } from './road.js';
import { admitDog, recover, sedate } from './visit.js';

export const roadSteps = ['consented', 'admitted', 'sedated', 'imaged', 'home', 'sent', 'withCentre', 'answered', 'reported'] as const;
export type RoadStep = (typeof roadSteps)[number];

export interface Pace extends Imaging, Reading {
  /** When the dog comes in; left out, at the time it is booked for. */
  arrives?: Date;
  /** Days from acknowledging to the reading. */
  readAfterDays?: number;
}

/** Drives a booked dog along the straight road, all its studies alike, until a step is reached. */
export async function takeTo(road: Road, step: RoadStep, pace: Pace = {}): Promise<Road> {
  const each = async (work: (study: string) => Promise<void>) => {
    for (const study of Object.keys(road.evaluation.studies)) await work(study);
  };
  const legs: Record<RoadStep, () => Promise<void>> = {
    consented: () => consentTo(road),
    admitted: async () => {
      road.clock.set(pace.arrives ?? slotOf(road));
      await admitDog(road);
    },
    sedated: async () => {
      road.clock.advance({ minutes: 12 });
      await sedate(road);
    },
    imaged: async () => {
      await imageViews(road, pace);
      await endImaging(road);
    },
    home: async () => {
      await recover(road);
    },
    sent: async () => {
      road.clock.advance({ minutes: 30 });
      await each((study) => dispatch(road, study));
    },
    withCentre: async () => {
      laterDays(road, 1);
      await each((study) => acknowledge(road, study));
    },
    answered: async () => {
      laterDays(road, pace.readAfterDays ?? 6);
      await each((study) => enterResult(road, study, pace));
    },
    reported: async () => {
      laterDays(road, 1);
      await each((study) => acceptAndRelease(road, study));
    },
  };
  for (const leg of roadSteps.slice(0, roadSteps.indexOf(step) + 1)) if (!reached(road, leg)) await legs[leg]();
  return road;
}

function slotOf(road: Road): Date {
  const { day, start } = factsOf(road, 'visitBooked').filter((f) => f.visit === road.visit).at(-1)!;
  return instantOf(day, start, road.house.zone);
}

/** What has been done already is not done again, so that a road can be taken further. */
function reached(road: Road, step: RoadStep): boolean {
  const has = (type: string) => road.facts.some((f) => f.type === type);
  const facts: Record<RoadStep, string> = {
    consented: 'consentGiven', admitted: 'admitted', sedated: 'sedationStarted', imaged: 'imagingEnded', home: 'wentHome',
    sent: 'packageSent', withCentre: 'acknowledged', answered: 'resultArrived', reported: 'letterReleased',
  };
  return has(facts[step]);
}
