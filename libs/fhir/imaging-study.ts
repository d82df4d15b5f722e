import type { ImagingStudy } from '@medplum/fhirtypes';
import { stands } from '#libs/pathway/film';
import type { VisitPicture } from '#libs/pathway/visit-picture';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { accessionOf, DICOM, reference, studyUid } from './codes.js';
import type { FhirOrder } from './source.js';

/** The films of one visit; X-ray machines are handed the same study number in their worklist. */
export function imagingStudy(order: FhirOrder, visit: VisitPicture): ImagingStudy | undefined {
  const first = visit.films[0];
  if (!first) return undefined;
  const films = visit.films.filter(stands);
  const served = [...new Set(films.flatMap((film) => film.serves))];
  return {
    resourceType: 'ImagingStudy',
    id: visit.id,
    meta: { lastUpdated: order.changed },
    identifier: [studyUid(visit.id), accessionOf(order.base, order.accession)],
    status: films.length > 0 ? 'available' : visit.films.every((film) => film.disowned) ? 'entered-in-error' : 'unknown',
    modality: [{ system: DICOM, code: 'DX', display: 'Digital Radiography' }],
    subject: reference('Patient', order.dog.id, order.dog.callName),
    started: first.taken.at,
    basedOn: served.map((study) => reference('ServiceRequest', study)),
    numberOfInstances: films.length,
    procedureReference: reference('Procedure', `${visit.id}-imaging`),
    description: viewsOf(order, served, films.map((film) => film.view)),
  };
}

function viewsOf({ picture }: FhirOrder, served: string[], views: string[]): string {
  const labels = new Map(picture.studies.filter((s) => served.includes(s.id)).flatMap((s) => findProtocol(s.protocol, s.version)?.views ?? []).map((view) => [view.code as string, view.label]));
  return views.map((view) => labels.get(view) ?? view).join('; ') || 'No film can be shown';
}
