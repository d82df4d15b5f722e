import { consentTo } from '../roads/consent-to.js';
import { perform } from '../roads/road.js';
import { elbows, extended, laxity, loaded, type Plan } from './plan.js';

/** To come on other days, and what never came. */
export const otherDays: Plan[] = [
  { dog: 'Basalt', studies: [extended, elbows], visit: { inDays: 1 }, play: (road) => consentTo(road) },
  // Booked a moment ago: the worker itself sends the first mails of the demo.
  { dog: 'Nettle', studies: [laxity], visit: { inDays: 3 }, bookedMinutesAgo: 25, play: async () => undefined },
  { dog: 'Skerry', studies: [laxity, loaded], visit: { inDays: 4 }, play: (road) => consentTo(road) },
  { dog: 'Tam', studies: [laxity, loaded], visit: { inDays: 4 }, bookedMinutesAgo: 55, play: async () => undefined },
  { dog: 'Moth', studies: [elbows], visit: { inDays: 8 }, answers: { medicine: 'unknown' }, play: (road) => consentTo(road, { sedation: false }) },
  {
    dog: 'Rill', studies: [laxity, elbows], visit: { inDays: -1 },
    play: async (road, days) => {
      await consentTo(road);
      road.clock.set(days.at(days.day(-1), '17:05'));
      await perform(road, road.house.desk, 'recordMissed', road.visit, {});
    },
  },
  {
    dog: 'Drift', studies: [laxity], visit: { inDays: -6 },
    play: async (road, days) => {
      road.clock.set(days.at(days.day(-8), '11:30'));
      await perform(road, road.house.desk, 'cancelVisit', road.visit, { side: 'owner', why: 'The dog will not be bred from.' });
      await perform(road, road.house.desk, 'cancelOrder', road.order, { why: 'The dog will not be bred from.' });
    },
  },
  {
    dog: 'Mallow', studies: [elbows], visit: { inDays: 5 },
    play: async (road, days) => {
      await consentTo(road);
      road.clock.advance({ minutes: 20 });
      const weirside = road.driver.scheme.houses.weirside;
      await perform(road, road.house.desk, 'addStudy', road.order, { protocol: 'hipLaxity', centre: road.driver.scheme.centres.threnfold.id });
      await perform(road, road.house.desk, 'offerReferral', road.order, { to: weirside.id, expires: days.day(6), ownerAgreed: true });
    },
  },
];
