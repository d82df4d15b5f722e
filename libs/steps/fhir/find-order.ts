import type { OrderType } from '#libs/fhir/resources';
import type { Tx } from '#libs/platform/database/db';

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/;

/** Which row an id begins with, for each kind of resource. */
const TABLES: Record<OrderType, string[]> = {
  ServiceRequest: ['study'], DiagnosticReport: ['study'], Observation: ['study'], Appointment: ['visit'], Procedure: ['visit'], ImagingStudy: ['visit'], Task: ['package'], Consent: ['visit', 'study', 'orders'],
};

/** The order that a resource is read off; undefined where this practice sees none. */
export async function orderOf(tx: Tx, type: OrderType, resource: string): Promise<string | undefined> {
  const [id] = UUID.exec(resource) ?? [];
  if (!id) return undefined;
  const parts = TABLES[type].map((table) => `SELECT ${table === 'orders' ? 'id' : 'order_id'} AS "order" FROM ${table} WHERE id = $1::uuid`);
  const [row] = await tx.$queryRawUnsafe<{ order: string }[]>(parts.join(' UNION ALL '), id);
  return row?.order;
}
