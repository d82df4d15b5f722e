import type { Observation, ObservationComponent } from '@medplum/fhirtypes';
import type { Standing } from '#libs/contracts/standing';
import type { StudyPicture } from '#libs/pathway/study-picture';
import { absent, narrative, ownConcept, reference } from './codes.js';
import { reportVersions } from './report-versions.js';
import type { FhirOrder } from './source.js';

const WHY: Record<Extract<Standing, { kind: 'none' }>['why'], string> = {
  noValue: 'The dog has no value of its own', arthrosis: 'Joints with arthrosis are not compared', operated: 'Operated joints are not compared', viewsMissing: 'Views are missing',
  notMeasured: 'Nobody has published how far two readings differ', noConsent: 'The owner did not agree to the breed’s statistics', noSet: 'There is no set of the breed yet', tooFew: 'Too few dogs of the breed',
};

/** Where the dog lay in its breed when its letter was released, with all that is not known about it. */
export function standingObservation(order: FhirOrder, study: StudyPicture): Observation | undefined {
  const told = order.standings.get(study.id);
  const version = reportVersions(study).at(-1);
  if (!told || !version?.result) return undefined;
  const letter = study.facts.last('letterReleased');
  return {
    resourceType: 'Observation',
    id: `${study.id}-standing`,
    meta: { lastUpdated: order.changed },
    text: narrative([wordsOf(told)]),
    basedOn: [reference('ServiceRequest', study.id)],
    status: version.status === 'entered-in-error' ? 'entered-in-error' : 'final',
    category: [{ text: 'Statistics' }],
    code: ownConcept('standing', 'placeOfTwenty', 'Places of every 20 dogs where this dog may lie'),
    subject: reference('Patient', order.dog.id, order.dog.callName),
    issued: letter?.at ?? version.by.at,
    ...(told.kind === 'place' ? { valueRange: { low: place(told.from), high: place(told.to) } } : { dataAbsentReason: absent(told.why, WHY[told.why]) }),
    derivedFrom: [reference('Observation', `${study.id}-dog`)],
    component: components(told),
  };
}

const place = (value: number) => ({ value, unit: 'of 20', code: '{place}', system: 'http://unitsofmeasure.org' });

function wordsOf(told: Standing): string {
  if (told.kind === 'none') return `${WHY[told.why]}.`;
  return `Between place ${told.from} and ${told.to} of 20, from the ${told.ends.low}, among ${told.n} dogs of the breed ${told.breed} ${told.age}, as of ${told.frozenOn}.`;
}

function components(told: Standing): ObservationComponent[] {
  const count = (code: string, words: string, value: number | null): ObservationComponent[] => (value === null ? [] : [{ code: ownConcept('standing', code, words), valueInteger: value }]);
  if (told.kind === 'none') return count('dogs', 'Dogs in the set', told.n);
  return [
    ...count('dogs', 'Dogs in the set', told.n),
    ...count('unsent', 'Dogs X-rayed whose films were never sent', told.unsent),
    ...count('halvesOneIn', 'On a second look one dog in so many changes halves', told.halvesOneIn),
    { code: ownConcept('standing', 'mayChange', 'So few dogs that the places may still change'), valueBoolean: told.warning },
    { code: ownConcept('standing', 'frozenOn', 'Day on which the set was frozen'), valueDateTime: told.frozenOn },
    { code: ownConcept('standing', 'group', 'Who is compared'), valueString: `${told.breed}, ${told.age}, ${told.fromYear} to ${told.toYear}` },
    { code: ownConcept('standing', 'ends', 'How the row is ordered'), valueString: `From ${told.ends.low} to ${told.ends.high}: ${told.ends.of}` },
    { code: ownConcept('standing', 'source', 'Who measured how far two looks differ'), valueString: told.source },
  ];
}
