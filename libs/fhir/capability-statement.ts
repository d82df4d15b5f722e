import type { CapabilityStatement } from '@medplum/fhirtypes';
import { fhirTypes, type FhirType } from './resources.js';

/** What may be searched by, beside _id, _count and, where a resource says when it changed, _lastUpdated. */
export const searchParameters: Record<FhirType, ('patient' | 'subject' | 'identifier')[]> = {
  Patient: ['identifier'],
  RelatedPerson: ['patient'],
  ServiceRequest: ['patient', 'subject', 'identifier'],
  Appointment: ['patient', 'identifier'],
  Consent: ['patient', 'identifier'],
  Procedure: ['patient', 'subject', 'identifier'],
  ImagingStudy: ['patient', 'subject', 'identifier'],
  Observation: ['patient', 'subject', 'identifier'],
  DiagnosticReport: ['patient', 'subject', 'identifier'],
  Task: ['patient', 'identifier'],
};
export const withHistory: readonly FhirType[] = ['Observation', 'DiagnosticReport'];
export const datesChanges = (type: FhirType): boolean => type !== 'Patient' && type !== 'RelatedPerson';

const WORDS = { patient: 'The dog: Patient/id or id', subject: 'The dog: Patient/id or id', identifier: 'For a dog, its animal number, transponder or tattoo; for all else the number of the order' };

export function capabilityStatement(base: string, date: string): CapabilityStatement {
  return {
    resourceType: 'CapabilityStatement',
    status: 'active',
    date,
    kind: 'instance',
    software: { name: 'Cotyla' },
    implementation: { description: 'Orders and results of one practice, to be read', url: base },
    fhirVersion: '4.0.1',
    format: ['application/fhir+json', 'json'],
    rest: [{
      mode: 'server',
      documentation: 'To be read only. Codes and extensions that begin with urn:cotyla: are explained in docs/integrations.md.',
      security: { description: 'A key that the practice’s manager made, as "Authorization: Bearer …". It acts for one practice, and for what it was made for.' },
      resource: fhirTypes.map((type) => ({
        type,
        interaction: [{ code: 'read' as const }, { code: 'search-type' as const }, ...(withHistory.includes(type) ? [{ code: 'vread' as const }, { code: 'history-instance' as const }] : [])],
        versioning: withHistory.includes(type) ? ('versioned' as const) : ('no-version' as const),
        searchParam: [
          { name: '_id', type: 'token' as const, documentation: 'The id of the resource' },
          ...(datesChanges(type) ? [{ name: '_lastUpdated', type: 'date' as const, documentation: 'With ge, gt, le, lt; a holding or a clock that ran out since is not a change' }] : []),
          ...searchParameters[type].map((name) => ({ name, type: name === 'identifier' ? ('token' as const) : ('reference' as const), documentation: WORDS[name] })),
        ],
      })),
    }],
  };
}
