import type { OrderPicture } from './order-picture.js';
import { type OrderStep, studySteps } from './steps.js';
import type { StudyPicture } from './study-picture.js';
import type { VisitPicture } from './visit-picture.js';

/** The least advanced open study; without one an open visit, for a dog may still be asleep; else how it ended. */
export function stepOfOrder(
  order: OrderPicture, studies: StudyPicture[], visits: VisitPicture[],
): { step: OrderStep; since: string | null } {
  if (!order.addressedBy) return { step: 'none', since: null };
  for (const step of studySteps) {
    const study = studies.find((one) => one.step === step);
    if (study) return { step, since: study.since };
  }
  const visit = visits.find((one) => one.open);
  if (visit) return { step: 'atVisit', since: visit.since };
  if (order.cancelled) return { step: 'cancelled', since: order.cancelled.at };
  const last = studies.map((study) => study.since).sort().at(-1);
  return last === undefined ? { step: 'empty', since: order.facts.first('orderOpened')?.at ?? null } : { step: 'closed', since: last };
}
