import type { Procedure } from '@medplum/fhirtypes';
import type { VisitPicture } from '#libs/pathway/visit-picture';
import { named, ownConcept, reference } from './codes.js';
import type { FhirOrder } from './source.js';

/** What was done with the dog in one visit. Drugs and readings stay in the record of the practice. */
export const procedures = (order: FhirOrder, visit: VisitPicture): Procedure[] => [sedation(order, visit), imaging(order, visit)].flatMap((one) => one ?? []);

function sedation(order: FhirOrder, visit: VisitPicture): Procedure | undefined {
  const started = visit.facts.first('sedationStarted');
  if (!started) return undefined;
  const recovered = visit.facts.first('recoverySigned');
  const status = recovered ? 'completed' : visit.step === 'died' ? 'stopped' : 'in-progress';
  return {
    ...base(order, visit, 'sedation', 'Sedation'),
    status,
    performedPeriod: { start: started.at, ...(recovered && { end: recovered.at }) },
    ...(status === 'stopped' && { statusReason: ownConcept('imaging-end', 'died', 'The dog died') }),
  };
}

const ENDS = { done: 'All views were taken', stopped: 'Stopped by somebody in the room', woke: 'The dog woke' };
const AWAY = { unwell: 'Dog unwell on the day', identity: 'The dog’s identity was not certain', unfit: 'Not fit for sedation', ownerDecided: 'The owner decided', emergency: 'An emergency' };

function imaging(order: FhirOrder, visit: VisitPicture): Procedure | undefined {
  const films = visit.films.filter((film) => !film.disowned);
  const ended = visit.facts.first('imagingEnded');
  const away = visit.facts.first('turnedAway');
  const first = visit.films[0]?.taken.at;
  const what = base(order, visit, 'imaging', 'Radiography');
  if (first && films.length === 0 && !ended) return { ...what, status: 'entered-in-error', performedPeriod: { start: first } };
  if (first ?? ended) {
    return {
      ...what,
      status: !ended ? (visit.open ? 'in-progress' : 'stopped') : ended.how === 'done' ? 'completed' : 'stopped',
      ...(ended && ended.how !== 'done' && { statusReason: ownConcept('imaging-end', ended.how, ENDS[ended.how]) }),
      performedPeriod: { ...(first && { start: first }), ...(ended && { end: ended.at }) },
    };
  }
  return away && visit.step === 'turnedAway' ? { ...what, status: 'not-done', statusReason: ownConcept('turned-away', away.why, AWAY[away.why]) } : undefined;
}

function base({ dog, changed, practices, picture }: FhirOrder, visit: VisitPicture, kind: string, words: string): Omit<Procedure, 'status'> {
  const where = practices[visit.booking?.where ?? picture.order.practice]?.name;
  return {
    resourceType: 'Procedure',
    id: `${visit.id}-${kind}`,
    meta: { lastUpdated: changed },
    basedOn: visit.studies.map((study) => reference('ServiceRequest', study)),
    code: ownConcept('procedure', kind, words),
    subject: reference('Patient', dog.id, dog.callName),
    ...(where && { performer: [{ actor: named(where) }] }),
  };
}
