import { storeProjection } from '#libs/steps/record/projection';
import { lockOrder } from '#libs/steps/record/order-record';
import { workOn } from '#libs/steps/record/work';
import { dogNamed, type DemoDog } from './demo-scheme.js';
import { bookDog, type Booking } from './roads/book-dog.js';
import { deliverPost } from './roads/post.js';
import type { Driver, Road } from './roads/road.js';
import { DemoDays } from './scenario/demo-days.js';
import { Diary } from './scenario/diary.js';
import { otherDays } from './scenario/other-days.js';
import type { Plan } from './scenario/plan.js';
import { read } from './scenario/read.js';
import { today } from './scenario/today.js';
import { underWay } from './scenario/under-way.js';

export const plans: Plan[] = [...read, ...underWay, ...otherDays, ...today];

/** Mail written within this many minutes is left to the worker, which sends it at its first start. */
const FRESH = 100;
const AT_ONCE = 3;

export interface Playing { say?: (line: string) => void; chosen?: Plan[] }

/** Books every order of the demo in the order of time, then lets each go its way; all of it has happened by now. */
export async function playScenario(driver: Driver, now: Date, { say = () => undefined, chosen = plans }: Playing = {}): Promise<Road[]> {
  const days = new DemoDays(now, driver.scheme.houses.weirside.zone);
  const diary = new Diary();
  const booked = chosen.map((plan) => ({ plan, booking: bookingOf(plan, dogNamed(driver.scheme, plan.dog), days, diary) }));
  booked.sort((a, b) => a.booking.at.getTime() - b.booking.at.getTime());
  const roads: { road: Road; plan: Plan }[] = [];
  for (const { plan, booking } of booked) roads.push({ road: await bookDog(driver, booking), plan });
  say(`${roads.length} dogs are booked in.`);
  const waiting = [...roads];
  let done = 0;
  const play = async (): Promise<void> => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      await playOne(next.road, next.plan, days);
      if (++done % 15 === 0) say(`${done} of ${roads.length} have gone their way.`);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, play));
  return roads.map(({ road }) => road);
}

async function playOne(road: Road, plan: Plan, days: DemoDays): Promise<void> {
  if (plan.bookedMinutesAgo === undefined) await deliverPost(road);
  await plan.play(road, days);
  if (road.clock.now() > days.now) throw new Error(`${plan.dog} is ahead of the time: ${road.clock.now().toISOString()}.`);
  await standAt(road, days);
}

/** As of now: the post of the past has come, and lists show today's holds. */
async function standAt(road: Road, { now }: DemoDays): Promise<void> {
  road.clock.set(new Date(Math.max(road.clock.now().getTime(), now.getTime() - 60_000)));
  await deliverPost(road, new Date(now.getTime() - FRESH * 60_000));
  const { driver: { db, publicUrl }, house, order } = road;
  road.evaluation = await db.practice(house.id, async (tx) => {
    const work = workOn(tx, now, house.desk, (await lockOrder(tx, order))!, publicUrl);
    await storeProjection(work, work.evaluation);
    await tx.order.update({ where: { id: order }, data: { createdAt: new Date(work.order.facts[0]!.rec) } });
    return work.evaluation;
  });
}

function bookingOf(plan: Plan, dog: DemoDog, days: DemoDays, diary: Diary): Booking {
  const { studies, answers, accepted } = plan;
  const { slot, at } = 'lane' in plan.visit ? slotToday(plan, plan.visit, dog, days) : slotOf(plan, plan.visit.inDays, dog, days, diary);
  return {
    dog, studies, slot, at: plan.bookedMinutesAgo === undefined ? at : days.minutesAgo(plan.bookedMinutesAgo), pace: 'lane' in plan.visit ? days.pace : 1,
    ...(answers ? { answers } : {}), ...(accepted === undefined ? {} : { accepted }),
  };
}

type Placed = Pick<Booking, 'slot' | 'at'>;

function slotToday(plan: Plan, { lane, inMinutes }: { lane: number; inMinutes: number }, dog: DemoDog, days: DemoDays): Placed {
  const lanes = today.flatMap((other) => ('lane' in other.visit && other.visit.lane === lane ? [other.visit.inMinutes] : []));
  return {
    slot: { day: days.today, start: days.slotToday(inMinutes, lanes), minutes: 30, lane: dog.house.lanes[lane]! },
    at: days.at(days.day(-9 - (plans.indexOf(plan) % 7)), `${10 + (plans.indexOf(plan) % 6)}:20`),
  };
}

function slotOf(plan: Plan, inDays: number, dog: DemoDog, days: DemoDays, diary: Diary): Placed {
  const day = days.day(inDays);
  const { lane, start } = diary.next(dog.house.id, day, dog.house.lanes.length);
  const bookedOn = days.day(Math.min(inDays, 0) - 8 - (plans.indexOf(plan) % 5));
  return { slot: { day, start, minutes: 45, lane: dog.house.lanes[lane]! }, at: days.at(bookedOn, `${10 + (plans.indexOf(plan) % 7)}:40`) };
}
