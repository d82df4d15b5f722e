import { randomUUID } from 'node:crypto';
import { localDay } from '#libs/pathway/zones';
import { TestClock } from '#libs/platform/clock/test-clock';
import { chargeVisit } from '#libs/steps/fees/account/charge-visit';
import { takePayment } from '#libs/steps/fees/account/take-payment';
import { acceptedEstimate } from '#libs/steps/fees/account/visit-account';
import { enterBill } from '#libs/steps/fees/bills/enter-bill';
import { sayOfLine } from '#libs/steps/fees/bills/say-of-line';
import type { StepDeps } from '#libs/steps/record/step-deps';
import { factsOf, type Driver, type Road } from './roads/road.js';

const HOUR = 3_600_000;

/** What was charged, paid and billed in the demo, for those of its orders that are there. Every amount is invented. */
export async function chargeDemo(driver: Driver, roads: Road[], now: Date): Promise<void> {
  const road = (dog: string) => roads.find((r) => r.dog.call === dog);
  const [heron, rowan, cobble, corrie, slate] = ['Heron', 'Rowan', 'Cobble', 'Corrie', 'Slate'].map(road);
  if (heron) {
    await charge(heron);
    await pay(heron, acceptedEstimate(lookOf(heron), heron.visit)!.amountMinor, 'W-1041');
  }
  if (rowan) {
    await charge(rowan, { words: 'One radiograph again', amountMinor: 2_600, why: 'The dog moved; the owner had gone for a walk.' });
    await pay(rowan, 12_000, 'W-1038');
  }
  if (cobble) await charge(cobble);
  if (corrie) await pay(corrie, 10_000, 'W-1066', bookedOn(corrie));
  if (rowan && slate && rowan.house.id === slate.house.id) await billOf(driver, rowan, slate, now);
}

const lookOf = (road: Road) => ({ facts: (<T extends Parameters<typeof factsOf>[1]>(type: T) => factsOf(road, type)) as never });
const deskAt = ({ driver: { db, publicUrl } }: Road, at: Date): StepDeps => ({ db, publicUrl, clock: new TestClock(at) });
const wentHome = (road: Road): Date => new Date(Date.parse(factsOf(road, 'wentHome').at(-1)!.at) + HOUR / 4);
const bookedOn = (road: Road): Date => new Date(Date.parse(factsOf(road, 'visitBooked')[0]!.at) + HOUR);

async function charge(road: Road, added?: { words: string; amountMinor: number; why: string }): Promise<void> {
  const lines = (acceptedEstimate(lookOf(road), road.visit)!.lines).map((_, line) => line);
  await chargeVisit(deskAt(road, wentHome(road)), road.house.desk, road.order, { key: randomUUID(), visit: road.visit, estimateLines: lines, added: added ? [added] : [] });
}

async function pay(road: Road, amountMinor: number, receipt: string, at = wentHome(road)): Promise<void> {
  const day = localDay(at.toISOString(), road.house.zone);
  await takePayment(deskAt(road, at), road.house.desk, road.order, { key: randomUUID(), visit: road.visit, kind: 'payment', amountMinor, day, how: 'card', person: road.dog.person.id, receipt });
}

/** One line that fits, one that is disputed, one with a number of nobody's. */
async function billOf(driver: Driver, rowan: Road, slate: Road, now: Date): Promise<void> {
  const at = new Date(now.getTime() - 72 * HOUR);
  const deps = deskAt(rowan, at);
  const [day, due] = [at, new Date(now.getTime() + 264 * HOUR)].map((moment) => localDay(moment.toISOString(), rowan.house.zone)) as [string, string];
  const { id: centre, feeMinor } = driver.scheme.centres.threnfold;
  const bill = await enterBill(deps, rowan.house.desk, {
    key: randomUUID(), centre, number: 'TH-2217', day, due, currency: rowan.house.prices.currency,
    lines: [
      { reference: rowan.accession, study: 'Elbows', amountMinor: feeMinor },
      { reference: slate.accession, study: 'Hips, extended', amountMinor: feeMinor + 900 },
      { reference: 'P-00000000', study: 'Elbows', amountMinor: feeMinor },
    ],
  });
  await sayOfLine(deps, rowan.house.desk, bill.id, bill.lines[1]!.id, { says: 'disputed', key: randomUUID(), words: 'The fee that was agreed on is lower. The centre has been asked for a new bill.' });
}
