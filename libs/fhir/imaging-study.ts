import type { ImagingStudy } from '@medplum/fhirtypes';
import { stands } from '#libs/pathway/film';
import type { VisitPicture } from '#libs/pathway/visit-picture';
import { accessionOf, DICOM, reference, studyUid } from './codes.js';
import { seriesOf } from './imaging-series.js';
import type { FhirOrder } from './source.js';

/** The films of one visit; X-ray machines are handed the same study number in their worklist. */
export function imagingStudy(order: FhirOrder, visit: VisitPicture): ImagingStudy | undefined {
  const first = visit.films[0];
  if (!first) return undefined;
  const films = visit.films.filter(stands);
  const served = [...new Set(films.flatMap((film) => film.serves))];
  const { series, views, whole } = seriesOf(order, films);
  const modalities = [...new Set(series.flatMap((one) => one.modality.code ?? []))];
  return {
    resourceType: 'ImagingStudy',
    id: visit.id,
    meta: { lastUpdated: order.changed },
    identifier: [studyUid(visit.id), accessionOf(order.base, order.accession)],
    status: films.length > 0 ? 'available' : visit.films.every((film) => film.disowned) ? 'entered-in-error' : 'unknown',
    modality: (modalities.length > 0 ? modalities : ['DX']).map((code) => ({ system: DICOM, code })),
    subject: reference('Patient', order.dog.id, order.dog.callName),
    started: first.taken.at,
    basedOn: served.map((study) => reference('ServiceRequest', study)),
    ...(whole && { numberOfSeries: series.length }),
    numberOfInstances: films.length,
    procedureReference: reference('Procedure', `${visit.id}-imaging`),
    description: views.join('; ') || 'No film can be shown',
    ...(series.length > 0 && { series }),
  };
}
