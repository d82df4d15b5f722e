import type { DiagnosticReport } from '@medplum/fhirtypes';
import type { StudyPicture } from '#libs/pathway/study-picture';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import type { JointReading } from '#libs/science/protocols/types';
import { accessionOf, concept, LOINC, named, narrative, reference } from './codes.js';
import { observationIds } from './observation.js';
import { reportVersions, type ReportVersion } from './report-versions.js';
import type { FhirOrder } from './source.js';

/** The report of one study, in every version from its first to the one that stands. */
export const diagnosticReports = (order: FhirOrder, study: StudyPicture): DiagnosticReport[] => reportVersions(study).map((version, i) => report(order, study, version, i + 1));

function report(order: FhirOrder, study: StudyPicture, { status, result, accepted, by }: ReportVersion, number: number): DiagnosticReport {
  const { dog, base, accession, centres, picture } = order;
  const protocol = findProtocol(study.protocol, study.version);
  const joints = result && (order.joints.get(result.result) as JointReading[] | undefined);
  const conclusion = protocol && joints && dogsResult(protocol, joints).words;
  const detail = (result?.detail ?? {}) as { reader?: string | null; comment?: string | null };
  const visits = picture.visits.filter((visit) => visit.films.some((film) => film.serves.includes(study.id)));
  const day = study.films[0]?.day;
  return {
    resourceType: 'DiagnosticReport',
    id: study.id,
    meta: { versionId: String(number), lastUpdated: by.rec },
    ...(conclusion && { text: narrative([`${protocol.name}: ${conclusion}.`, ...(status === 'entered-in-error' ? ['This result was withdrawn.'] : []), ...(detail.comment ? [detail.comment] : [])]) }),
    identifier: [accessionOf(base, accession)],
    basedOn: [reference('ServiceRequest', study.id)],
    status,
    category: [concept('http://terminology.hl7.org/CodeSystem/v2-0074', 'RAD', 'Radiology')],
    code: { ...concept(LOINC, '18748-4', 'Diagnostic imaging study'), text: protocol?.name ?? study.protocol },
    subject: reference('Patient', dog.id, dog.callName),
    ...(day && { effectiveDateTime: day }),
    issued: accepted?.at ?? by.at,
    performer: [named(centres[study.centre]?.name ?? 'the centre')],
    ...(detail.reader && { resultsInterpreter: [named(detail.reader)] }),
    ...(joints && { result: observationIds(study, joints).map((id) => reference('Observation', id)) }),
    ...(visits.length > 0 && { imagingStudy: visits.map((visit) => reference('ImagingStudy', visit.id)) }),
    ...(conclusion && { conclusion }),
  };
}
