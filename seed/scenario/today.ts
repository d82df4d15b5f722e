import { dispatch } from '../roads/centre.js';
import { consentTo } from '../roads/consent-to.js';
import { endImaging, imageViews, judge, takeView } from '../roads/image-views.js';
import { ownerOf, perform, type Road } from '../roads/road.js';
import { takeTo } from '../roads/take-to.js';
import { admitDog, examine, goHome, readNow, scanDog, sedate, signRecovery, weightOf } from '../roads/visit.js';
import { elbows, extended, laxity, type Plan } from './plan.js';
import type { DemoDays } from './demo-days.js';

/** Readings up to a moment ago, never more than five minutes apart. */
async function watchTillNow(road: Road, days: DemoDays): Promise<void> {
  const step = 4 * 60_000 * days.pace;
  while (road.clock.now().getTime() + step < days.now.getTime()) {
    road.clock.set(new Date(road.clock.now().getTime() + step));
    await readNow(road);
  }
}

const arrive = async (road: Road, days: DemoDays, minutesAgo: number): Promise<void> => {
  await consentTo(road);
  road.clock.set(days.ago(minutesAgo));
};

const asleep = async (road: Road, days: DemoDays, minutesAgo: number): Promise<void> => {
  await arrive(road, days, minutesAgo);
  await admitDog(road);
  road.clock.advance({ minutes: 6 });
  await sedate(road);
};

/** Today at Weirside: somebody at each step, and one of everything that can be missing. */
export const today: Plan[] = [
  {
    dog: 'Pebble', studies: [laxity, extended], visit: { lane: 0, inMinutes: -170 },
    play: async (road, days) => {
      await takeTo(road, 'home', { arrives: days.ago(175) });
      road.clock.advance({ minutes: 20 });
      for (const study of Object.keys(road.evaluation.studies)) await dispatch(road, study, { arrives: false });
    },
  },
  { dog: 'Gale', studies: [elbows], visit: { lane: 0, inMinutes: -130 }, play: (road, days) => takeTo(road, 'home', { arrives: days.ago(134) }) },
  {
    dog: 'Fennec', studies: [elbows], visit: { lane: 0, inMinutes: -90 },
    play: async (road, days) => {
      await takeTo(road, 'imaged', { arrives: days.ago(86) });
      await signRecovery(road);
    },
  },
  {
    dog: 'Alder', studies: [laxity], visit: { lane: 0, inMinutes: -55 },
    play: async (road, days) => {
      await asleep(road, days, 42);
      await scanDog(road, 'table');
      for (const view of ['vdExtended', 'vdCompression']) {
        await takeView(road, view);
        await judge(road, 'accept');
      }
      await takeView(road, 'vdDistraction', 'turned');
      await judge(road, 'retake', ['pelvis turned']);
      await watchTillNow(road, days);
    },
  },
  {
    dog: 'Moss', studies: [laxity], visit: { lane: 0, inMinutes: -20 },
    play: async (road, days) => {
      await arrive(road, days, 8);
      await perform(road, road.lane.nurse, 'admit', road.visit, { weightKg: weightOf(road), bodyCondition: 5, fastedHours: 11 });
    },
  },
  { dog: 'Sedge', studies: [laxity], visit: { lane: 0, inMinutes: 15 }, play: (road) => consentTo(road, { sedation: false }) },
  { dog: 'Pilot', studies: [extended, elbows], visit: { lane: 0, inMinutes: 50 }, play: (road) => consentTo(road) },
  { dog: 'Juniper', studies: [extended], visit: { lane: 0, inMinutes: 85 }, play: (road) => consentTo(road, { statistics: 'no' }) },
  { dog: 'Hazel', studies: [laxity], visit: { lane: 0, inMinutes: 120 }, accepted: false, play: (road) => consentTo(road) },

  {
    dog: 'Sorrel', studies: [extended, elbows], visit: { lane: 1, inMinutes: -155 },
    play: async (road, days) => {
      await asleep(road, days, 158);
      await imageViews(road, { views: ['vdExtended', 'mlFlexedLeft'] });
      await perform(road, road.lane.nurse, 'stopImaging', road.visit, { woke: true });
      await signRecovery(road);
      await goHome(road);
    },
  },
  {
    dog: 'Thistle', studies: [elbows], visit: { lane: 1, inMinutes: -118 },
    play: async (road, days) => {
      await arrive(road, days, 120);
      await admitDog(road);
      road.clock.advance({ minutes: 9 });
      await perform(road, road.lane.vet, 'turnAway', road.visit, { reason: 'unwell', note: 'Coughs when the neck is touched. The owner calls when it is over.' });
    },
  },
  {
    dog: 'Tolle', studies: [laxity], visit: { lane: 1, inMinutes: -85 },
    play: async (road, days) => {
      await asleep(road, days, 62);
      await imageViews(road);
      await endImaging(road);
      await watchTillNow(road, days);
    },
  },
  {
    dog: 'Wenna', studies: [laxity], visit: { lane: 1, inMinutes: -50 },
    play: async (road, days) => {
      await asleep(road, days, 30);
      await watchTillNow(road, days);
    },
  },
  {
    dog: 'Otter', studies: [extended], visit: { lane: 1, inMinutes: -18 },
    play: async (road, days) => {
      await arrive(road, days, 16);
      await admitDog(road);
      road.clock.advance({ minutes: 7 });
      await examine(road, 2);
    },
  },
  { dog: 'Ember', studies: [laxity], visit: { lane: 1, inMinutes: 14 }, answers: { season: 'unknown' }, play: (road) => consentTo(road) },
  {
    dog: 'Ash', studies: [elbows], visit: { lane: 1, inMinutes: 48 },
    play: async (road, days) => {
      await consentTo(road);
      road.clock.set(days.at(days.day(-1), '18:20'));
      await perform(road, ownerOf(road), 'cancelVisit', road.visit, { side: 'owner', why: 'The family is away. They call for another day.' });
    },
  },
  { dog: 'Lichen', studies: [laxity], visit: { lane: 0, inMinutes: 40 }, play: (road) => consentTo(road) },
];
