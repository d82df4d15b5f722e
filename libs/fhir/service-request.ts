import type { Extension, ServiceRequest } from '@medplum/fhirtypes';
import { holdWords, stepLabels } from '#libs/pathway/words';
import type { StudyPicture } from '#libs/pathway/study-picture';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { accessionOf, extensionUrl, named, numberSystem, ownConcept, reference, SNOMED } from './codes.js';
import type { FhirOrder } from './source.js';

const REGIONS = { hip: ['24136001', 'Hip joint'], elbow: ['16953009', 'Elbow joint'] } as const;

/** One study of an order; those of one order share its number. */
export function serviceRequest(order: FhirOrder, study: StudyPicture): ServiceRequest {
  const { base, accession, dog, centres, practices, picture } = order;
  const protocol = findProtocol(study.protocol, study.version);
  const name = protocol?.name ?? study.protocol;
  const region = protocol && REGIONS[protocol.region];
  const accessionNumber = accessionOf(base, accession);
  return {
    resourceType: 'ServiceRequest',
    id: study.id,
    meta: { lastUpdated: order.changed },
    extension: standing(order, study),
    identifier: [accessionNumber],
    requisition: { system: numberSystem(base, 'accession'), value: accession },
    status: study.step === 'ended' ? 'revoked' : study.step === 'reported' ? 'completed' : 'active',
    intent: 'order',
    code: { coding: [{ system: extensionUrl('study'), version: study.version, code: study.protocol, display: name }], text: name },
    subject: reference('Patient', dog.id, dog.callName),
    authoredOn: study.facts.first('studyAdded')?.at ?? order.changed,
    requester: named(practices[picture.order.practice]?.name ?? 'the practice'),
    performer: [named(centres[study.centre]?.name ?? 'the centre')],
    ...(region && { bodySite: [{ coding: [{ system: SNOMED, code: region[0], display: region[1] }], text: region[1] }] }),
  };
}

/** Where the study stands, and what holds it: the standard's own status is too coarse to work with. */
function standing({ evaluation }: FhirOrder, study: StudyPicture): Extension[] {
  const holds = [...evaluation.order.holds, ...(evaluation.studies[study.id]?.holds ?? [])];
  return [
    { url: extensionUrl('step'), valueCodeableConcept: ownConcept('study-step', study.step, stepLabels[study.step]) },
    ...holds.map((hold): Extension => ({ url: extensionUrl('hold'), valueCodeableConcept: ownConcept('hold-code', hold.code, holdWords(hold).title) })),
  ];
}
