import { currentOf, type OrderType, type Told } from '#libs/fhir/resources';
import type { FactType } from '#libs/pathway/facts';
import type { Tx } from '#libs/platform/database/db';
import type { StepDeps } from '../record/step-deps.js';
import { inTime, type Asked } from './asked.js';
import { readCursor, writeCursor, type Cursor } from './cursor.js';
import { fhirOrders } from './fhir-order.js';
import type { Found } from './found.js';
import { readingOf } from './read-resource.js';
import { noteRead, type Reader } from './reader.js';

/** An order without any of these has no resource of the kind. */
const MADE_OF: Record<OrderType, FactType[]> = {
  ServiceRequest: ['studyAdded'], Appointment: ['visitOpened'], Consent: ['consentGiven', 'consentWithdrawn'], Procedure: ['sedationStarted', 'exposureTaken', 'imagingEnded', 'turnedAway'], ImagingStudy: ['exposureTaken'],
  Observation: ['resultAccepted'], DiagnosticReport: ['packageSent'], Task: ['packageSealed'],
};

const ORDERS = `SELECT o.id, o.created_at AS at FROM orders o
  WHERE ($1::timestamptz IS NULL OR (o.created_at, o.id) >= ($1::timestamptz, $2::uuid)) AND ($3::uuid IS NULL OR o.dog_id = $3::uuid) AND ($4::text IS NULL OR o.accession = $4)
    AND EXISTS (SELECT 1 FROM fact f WHERE f.order_id = o.id AND f.type = ANY($5::text[])) AND ($6::timestamptz IS NULL OR EXISTS (SELECT 1 FROM fact f WHERE f.order_id = o.id AND f.rec >= $6::timestamptz))
  ORDER BY o.created_at, o.id LIMIT $7`;

/** Orders are read off their facts so many at a time. */
const AT_ONCE = 25;
/** A page that would look through more orders than this ends early, with a link that goes on. */
const MOST_ORDERS = 500;
const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

export async function searchOrders(tx: Tx, deps: StepDeps, reader: Reader, asked: Asked & { type: OrderType }): Promise<Found> {
  if (asked.patient && !UUID.test(asked.patient)) return { resources: [] };
  const resources: Told[] = [];
  const orders: string[] = [];
  let place = asked.after ? readCursor(asked.after) : undefined;
  let next: Cursor | undefined;
  for (let looked = 0; !next; looked += AT_ONCE) {
    const rows: { id: string; at: Date }[] = await tx.$queryRawUnsafe(ORDERS, place?.at ?? null, place?.id ?? null, asked.patient ?? null, asked.identifier?.toUpperCase() ?? null, MADE_OF[asked.type], asked.changed.from ?? null, AT_ONCE + 1);
    const read = await fhirOrders(tx, rows.slice(0, AT_ONCE).map(({ id }) => id), readingOf(deps, reader));
    for (const { id, at } of rows.slice(0, AT_ONCE)) {
      for (const resource of afterIn(currentOf(read.get(id)!, asked.type), place?.id === id ? place.resource : undefined)) {
        if (!inTime(resource, asked.changed)) continue;
        if (resources.length === asked.count) {
          next = place;
          break;
        }
        resources.push(resource);
        orders.push(id);
        place = { id, at, resource: resource.id };
      }
      if (next) break;
    }
    const following = rows[AT_ONCE];
    if (next || !following) break;
    place = following;
    if (looked + AT_ONCE >= MOST_ORDERS) next = following;
  }
  await noteRead(tx, reader, asked.type, { orders });
  return { resources, next: next && writeCursor(next) };
}

/** What comes behind a resource that was handed out before; should that be gone by now, all of the order come again. */
function afterIn(all: Told[], resource: string | undefined): Told[] {
  return resource ? all.slice(all.findIndex(({ id }) => id === resource) + 1) : all;
}
