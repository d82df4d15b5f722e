import { randomUUID } from 'node:crypto';
import { acknowledge, dispatch, enterResult, readerOf } from '../roads/centre.js';
import { acceptAndRelease } from '../roads/letter.js';
import { laterDays, ownerOf, perform, report, studyOf } from '../roads/road.js';
import { takeTo } from '../roads/take-to.js';
import type { Road } from '../roads/road.js';
import type { DemoDays } from './demo-days.js';
import { elbows, extended, laxity, loaded, type Plan } from './plan.js';

/** Reminders as the worker would have sent them, on each day that was due before today. */
async function remindUntilToday(road: Road, study: string, days: DemoDays): Promise<void> {
  for (let chase = road.evaluation.studies[study]!.chase; chase && chase.sent < 2 && chase.nextDay < days.today; chase = road.evaluation.studies[study]!.chase) {
    road.clock.set(days.at(chase.nextDay, '08:00'));
    await report(road, 'remindCentre', [{ type: 'chaseSent', study, clock: chase.clock, day: chase.nextDay, digest: randomUUID() }]);
  }
}

/** The right elbow cannot be read; what else was sent goes on. */
async function rejectElbow(road: Road): Promise<void> {
  const study = studyOf(road, 'elbow');
  await perform(road, readerOf(road, study), 'rejectFilms', study, { views: ['mlFlexedRight'], reasons: ['The right elbow lay turned, so the joint cannot be seen.'] });
}

/** Imaged, and on the way to a reader and back. */
export const underWay: Plan[] = [
  {
    dog: 'Flint', studies: [laxity], visit: { inDays: -1 },
    play: async (road) => {
      await takeTo(road, 'home');
      road.clock.advance({ minutes: 40 });
      await perform(road, road.house.desk, 'seal', studyOf(road), {});
    },
  },
  {
    dog: 'Corrie', studies: [extended], visit: { inDays: -1 },
    play: async (road, days) => {
      await takeTo(road, 'home');
      road.clock.set(days.minutesAgo(30));
      await dispatch(road, studyOf(road), { arrives: false });
    },
  },
  { dog: 'Quill', studies: [elbows], visit: { inDays: -12 }, play: async (road, days) => { await takeTo(road, 'sent'); await remindUntilToday(road, studyOf(road), days); } },
  { dog: 'Bracken', studies: [elbows, extended], visit: { inDays: -5 }, play: (road) => takeTo(road, 'withCentre') },
  { dog: 'Bryn', studies: [loaded], visit: { inDays: -6 }, play: (road) => takeTo(road, 'withCentre') },
  { dog: 'Linnet', studies: [laxity], visit: { inDays: -32 }, play: async (road, days) => { await takeTo(road, 'withCentre'); await remindUntilToday(road, studyOf(road), days); } },
  {
    dog: 'Sleet', studies: [['elbow', 'sluiceGreen']], visit: { inDays: -2 },
    play: async (road, days) => {
      await takeTo(road, 'home');
      await perform(road, road.house.desk, 'seal', studyOf(road), {});
      const centre = road.driver.scheme.centres.sluiceGreen.id;
      await report(road, 'closeCentre', [{ type: 'centreClosed', centre, from: days.day(-1), until: days.day(6) }]);
    },
  },
  { dog: 'Reed', studies: [laxity], visit: { inDays: -14 }, play: (road) => takeTo(road, 'answered', { readAfterDays: 5 }) },
  {
    dog: 'Grayle', studies: [laxity], visit: { inDays: -16 },
    play: (road) => takeTo(road, 'answered', { joints: [{ joint: 'left', value: 0.52 }, { joint: 'right', value: 1.15 }], comment: 'Seen twice; the head lies far out on the right.' }),
  },
  {
    dog: 'Lark', studies: [extended], visit: { inDays: -15 },
    play: async (road, days) => {
      const criteria = { criteria: '2022' };
      await takeTo(road, 'answered', { joints: [{ joint: 'left', value: 'D1', findings: criteria }, { joint: 'right', value: 'C2', findings: criteria }], readAfterDays: 5 });
      road.clock.advance({ hours: 3 });
      await perform(road, road.lane.vet, 'setPhoneFirst', studyOf(road), { until: days.day(2) });
      await perform(road, road.lane.vet, 'acceptResult', studyOf(road), { result: road.facts.flatMap((f) => (f.type === 'resultArrived' ? [f.result] : []))[0]! });
    },
  },
  {
    dog: 'Brannoch', studies: [laxity, elbows], visit: { inDays: -20 },
    play: async (road) => {
      await takeTo(road, 'withCentre');
      laterDays(road, 5);
      await rejectElbow(road);
      await enterResult(road, studyOf(road, 'hipLaxity'));
      laterDays(road, 2);
      await acceptAndRelease(road, studyOf(road, 'hipLaxity'));
    },
  },
  {
    dog: 'Tarn', studies: [elbows], visit: { inDays: -18 },
    play: async (road, days) => {
      await takeTo(road, 'withCentre');
      laterDays(road, 4);
      await rejectElbow(road);
      laterDays(road, 1);
      await perform(road, road.house.desk, 'openVisit', road.order, { studies: [studyOf(road)], reason: 'rejected', restUntil: days.day(1), payer: road.dog.person.id });
      const second = Object.keys(road.evaluation.visits).at(-1)!;
      const { room, operator, nurse, vet } = road.lane;
      await perform(road, road.house.desk, 'book', second, { day: days.day(9), start: '14:00', minutes: 45, room, operator: operator.id, nurse: nurse.id, vet: vet.id });
    },
  },
  {
    dog: 'Fern', studies: [laxity], visit: { inDays: -9 },
    play: async (road) => {
      await takeTo(road, 'sent');
      laterDays(road, 1);
      await acknowledge(road, studyOf(road));
      laterDays(road, 1);
      await perform(road, ownerOf(road), 'withdrawStudy', studyOf(road), { purpose: 'study', why: 'The dog will not be bred from.' });
    },
  },
];
