import type { Coding, ImagingStudySeries } from '@medplum/fhirtypes';
import { isUid, namedUid, sopClasses } from '#libs/dicom/uids';
import { regionOf } from '#libs/dicom/view-codes';
import type { Film } from '#libs/pathway/film';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { View } from '#libs/science/protocols/types';
import { DICOM, SNOMED } from './codes.js';
import type { FhirImage, FhirOrder } from './source.js';

type Side = View['side'];
interface Numbers { series: string; modality: string; uid: string; sopClass: string }
interface Instance extends Numbers { film: Film; view: View | undefined; label: string }

const snomed = (code: string, display: string): Coding => ({ system: SNOMED, code, display });
const REGIONS = { hip: snomed('24136001', 'Hip joint'), elbow: snomed('16953009', 'Elbow joint') };
/** The value set bodysite-laterality of FHIR R4. */
const SIDES: Record<Side, Coding> = { left: snomed('419161000', 'Unilateral left'), right: snomed('419465000', 'Unilateral right'), both: snomed('51440002', 'Bilateral') };

/**
 * Films by the series of their files. A PNG or JPEG has numbers of ours and the kind that it leaves as. A DICOM file that did not say its
 * numbers, or was stored before they were kept, is counted and not listed: then the list is not `whole`.
 */
export function seriesOf({ picture, images }: FhirOrder, films: readonly Film[]): { series: ImagingStudySeries[]; views: string[]; whole: boolean } {
  const known = new Map(picture.studies.flatMap((s) => findProtocol(s.protocol, s.version)?.views ?? []).map((view) => [view.code as string, view]));
  const label = (film: Film) => known.get(film.view)?.label ?? film.view;
  const instances = films.flatMap((film) => {
    const numbers = numbersOf(film, images.get(film.taken.image), known.get(film.view)?.side ?? 'both');
    return numbers ? [{ ...numbers, film, view: known.get(film.view), label: label(film) }] : [];
  });
  const uids = [...new Set(instances.map((one) => one.series))];
  return { series: uids.map((uid, i) => oneSeries(uid, i + 1, instances.filter((one) => one.series === uid))), views: films.map(label), whole: instances.length === films.length };
}

function numbersOf({ id, visit, view, size }: Film, image: FhirImage | undefined, side: Side): Numbers | undefined {
  if (!image) return undefined;
  if (image.kind === 'dicom') {
    const { sopInstanceUid: uid, sopClassUid: sopClass, seriesInstanceUid: series, modality = 'DX' } = image;
    return isUid(uid) && isUid(sopClass) && isUid(series) ? { series, modality, uid, sopClass } : undefined;
  }
  const [sopClass, modality] = size ? [sopClasses.dxForPresentation, 'DX'] : [sopClasses.secondaryCapture, 'OT'];
  return { series: namedUid('pictures', visit, modality, regionOf(view), side), modality, uid: namedUid('picture', visit, id), sopClass };
}

function oneSeries(uid: string, number: number, instances: Instance[]): ImagingStudySeries {
  const [regions, sides] = [new Set(instances.map(({ film }) => regionOf(film.view))), new Set(instances.map(({ view }) => view?.side ?? 'both'))];
  return {
    uid, number, modality: { system: DICOM, code: instances[0]!.modality }, numberOfInstances: instances.length, started: instances[0]!.film.taken.at,
    ...(regions.size === 1 && { bodySite: REGIONS[[...regions][0]!] }),
    ...(sides.size === 1 && { laterality: SIDES[[...sides][0]!] }),
    instance: instances.map((one, i) => ({ uid: one.uid, sopClass: { system: 'urn:ietf:rfc:3986', code: `urn:oid:${one.sopClass}` }, number: i + 1, title: one.label })),
  };
}
