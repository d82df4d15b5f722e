import type { Resource } from '@medplum/fhirtypes';
import { appointment } from './appointment.js';
import { consents } from './consent.js';
import { diagnosticReports } from './diagnostic-report.js';
import { imagingStudy } from './imaging-study.js';
import { observations } from './observation.js';
import { procedures } from './procedure.js';
import { serviceRequest } from './service-request.js';
import type { FhirOrder } from './source.js';
import { standingObservation } from './standing-observation.js';
import { tasks } from './task.js';

/** Read off an order's facts. Dogs and their people are in the register. */
export const orderTypes = ['ServiceRequest', 'Appointment', 'Consent', 'Procedure', 'ImagingStudy', 'Observation', 'DiagnosticReport', 'Task'] as const;
export const registerTypes = ['Patient', 'RelatedPerson'] as const;
export const fhirTypes = [...registerTypes, ...orderTypes] as const;
export type OrderType = (typeof orderTypes)[number];
export type FhirType = (typeof fhirTypes)[number];
export type Told = Resource & { id: string };

/** All versions of all resources of one kind, oldest first; most kinds have one version, which is read off the facts of today. */
export function versionsOf(order: FhirOrder, type: OrderType): Told[] {
  const { studies, visits } = order.picture;
  return makers[type](order, studies, visits) as Told[];
}

const makers: Record<OrderType, (order: FhirOrder, studies: FhirOrder['picture']['studies'], visits: FhirOrder['picture']['visits']) => Resource[]> = {
  ServiceRequest: (order, studies) => studies.map((study) => serviceRequest(order, study)),
  Appointment: (order, _, visits) => visits.map((visit) => appointment(order, visit)),
  Consent: (order) => consents(order),
  Procedure: (order, _, visits) => visits.flatMap((visit) => procedures(order, visit)),
  ImagingStudy: (order, _, visits) => visits.flatMap((visit) => imagingStudy(order, visit) ?? []),
  Observation: (order, studies) => studies.flatMap((study) => [...observations(order, study), ...[standingObservation(order, study)].flatMap((one) => one ?? [])]),
  DiagnosticReport: (order, studies) => studies.flatMap((study) => diagnosticReports(order, study)),
  Task: (order, studies) => studies.flatMap((study) => tasks(order, study)),
};

/** As each stands now. */
export function currentOf(order: FhirOrder, type: OrderType): Told[] {
  return [...new Map(versionsOf(order, type).map((resource) => [resource.id, resource])).values()];
}
