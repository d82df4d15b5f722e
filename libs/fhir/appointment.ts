import type { Appointment } from '@medplum/fhirtypes';
import { Temporal } from 'temporal-polyfill';
import type { VisitPicture } from '#libs/pathway/visit-picture';
import { stepLabels } from '#libs/pathway/words';
import { named, ownConcept, reference } from './codes.js';
import type { FhirOrder } from './source.js';

type Status = NonNullable<Appointment['status']>;
const STATUS: Record<VisitPicture['step'], Status> = {
  wanted: 'proposed', booked: 'booked', admitted: 'checked-in', sedated: 'checked-in', imaged: 'checked-in', recovered: 'checked-in',
  home: 'fulfilled', cancelled: 'cancelled', missed: 'noshow', turnedAway: 'fulfilled', died: 'fulfilled',
};

/** One day at a practice. */
export function appointment(order: FhirOrder, visit: VisitPicture): Appointment {
  const when = whenOf(order, visit);
  const status = statusOf(visit, when !== undefined);
  const where = visit.booking?.where ?? order.picture.order.practice;
  return {
    resourceType: 'Appointment',
    id: visit.id,
    meta: { lastUpdated: order.changed },
    status,
    ...(status === 'cancelled' && { cancelationReason: ownConcept('visit-step', visit.step, stepLabels[visit.step]) }),
    ...when,
    basedOn: visit.studies.map((study) => reference('ServiceRequest', study)),
    participant: [
      { actor: reference('Patient', order.dog.id, order.dog.callName), required: 'required', status: 'accepted' },
      { actor: named(order.practices[where]?.name ?? 'the practice'), required: 'required', status: 'accepted' },
      ...order.people.filter(({ role, until }) => role === 'owner' && until === null).map(({ id, name }) => ({ actor: reference('RelatedPerson', id, name), required: 'optional' as const, status: 'accepted' as const })),
    ],
  };
}

/** The standard wants a time wherever somebody was expected. */
function statusOf({ step, open, facts }: VisitPicture, timed: boolean): Status {
  if (!timed) return open ? 'proposed' : 'cancelled';
  return step === 'died' && !facts.has('admitted') ? 'cancelled' : STATUS[step];
}

/** Our own choice, for bookings that do not say how long they are. */
const USUAL_MINUTES = 45;

function whenOf({ practices }: FhirOrder, { booking }: VisitPicture): Pick<Appointment, 'start' | 'end' | 'minutesDuration'> | undefined {
  if (!booking) return undefined;
  const start = Temporal.PlainDateTime.from(`${booking.day}T${booking.start}`).toZonedDateTime(practices[booking.where]?.zone ?? 'UTC').epochMilliseconds;
  const minutes = typeof booking.detail?.minutes === 'number' ? booking.detail.minutes : USUAL_MINUTES;
  return { start: new Date(start).toISOString(), end: new Date(start + minutes * 60_000).toISOString(), minutesDuration: minutes };
}
