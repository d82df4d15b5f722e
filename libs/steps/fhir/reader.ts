import type { Scope } from '#libs/contracts/integrations';
import type { FhirType } from '#libs/fhir/resources';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { StepError } from '../record/step-error.js';

/** Another program, by its key: acts for one practice and sees what that one sees. */
export interface Reader {
  id: string;
  name: string;
  practice: string;
  scopes: Scope[];
}

const NEEDS: Record<FhirType, Scope[]> = {
  Patient: ['orders', 'results', 'owners'], RelatedPerson: ['owners'],
  ServiceRequest: ['orders'], Appointment: ['orders'], Consent: ['orders'], Procedure: ['orders'], ImagingStudy: ['orders'], Task: ['orders'],
  Observation: ['results'], DiagnosticReport: ['results'],
};

/** Any one of what a kind of resource needs. */
export function mayRead({ scopes }: Reader, type: FhirType): void {
  if (!NEEDS[type].some((scope) => scopes.includes(scope))) throw new StepError('NOT_YOUR_ROLE', `This key was not made to read ${NEEDS[type].join(' or ')}. The practice’s manager can make one that does.`);
}

/** Who looked at what: one row for each order or dog that was handed out. */
export async function noteRead(tx: Tx, reader: Reader, type: FhirType, read: { orders?: string[]; dogs?: string[] }): Promise<void> {
  const entry = { by: reader.id, role: 'key', action: 'fhirRead', practice: reader.practice, detail: { name: reader.name, type } };
  for (const order of new Set(read.orders)) await audit(tx, { ...entry, order });
  for (const dog of new Set(read.dogs)) await audit(tx, { ...entry, subject: dog });
}
