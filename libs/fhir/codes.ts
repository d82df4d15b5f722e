import type { CodeableConcept, Identifier, Quantity, Reference } from '@medplum/fhirtypes';
import { uidOf } from '#libs/dicom/uids';

/** Names of our own code lists, the same on every server. */
const own = (list: string): string => `urn:cotyla:fhir:${list}`;
export const extensionUrl = own;

export const LOINC = 'http://loinc.org';
export const SNOMED = 'http://snomed.info/sct';
export const UCUM = 'http://unitsofmeasure.org';
export const DICOM = 'http://dicom.nema.org/resources/ontology/DCM';
const ABSENT = 'http://terminology.hl7.org/CodeSystem/data-absent-reason';
const IDENTIFIER_TYPE = 'http://terminology.hl7.org/CodeSystem/v2-0203';

export const ownConcept = (list: string, code: string, words: string): CodeableConcept => ({ coding: [{ system: own(list), code, display: words }], text: words });

export const concept = (system: string, code: string, display: string): CodeableConcept => ({ coding: [{ system, code, display }], text: display });

/** Why there is no value: our own code and words, beside the standard's own coarse one. */
export function absent(code: string, words: string, standard: 'unknown' | 'not-performed' = 'unknown'): CodeableConcept {
  return { coding: [{ system: ABSENT, code: standard }, { system: own('no-value'), code, display: words }], text: words };
}

/** Numbers that one installation gives are told apart from another's by its address. */
export const numberSystem = (base: string, kind: string): string => `${base}/number/${kind}`;

export const accessionOf = (base: string, value: string): Identifier => ({ type: concept(IDENTIFIER_TYPE, 'ACSN', 'Accession ID'), system: numberSystem(base, 'accession'), value });

export const studyUid = (visit: string): Identifier => ({ system: 'urn:dicom:uid', value: `urn:oid:${uidOf(visit)}` });

export const reference = (type: string, id: string, display?: string): Reference<never> => ({ reference: `${type}/${id}`, type, ...(display && { display }) }) as Reference<never>;

/** Somebody or something that is no resource of this server. */
export const named = (display: string): Reference<never> => ({ display });

const UCUM_UNITS: Record<string, string> = { '': '1', '°': 'deg', mm: 'mm', '%': '%' };

export function quantity(value: number, unit: string): Quantity {
  const code = UCUM_UNITS[unit];
  return { value, ...(unit && { unit }), ...(code && { system: UCUM, code }) };
}

export const narrative = (lines: string[]): { status: 'generated'; div: string } => ({
  status: 'generated',
  div: `<div xmlns="http://www.w3.org/1999/xhtml">${lines.map((line) => `<p>${line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')}</p>`).join('')}</div>`,
});
