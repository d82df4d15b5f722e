import { patient, replacedPatient } from '#libs/fhir/patient';
import { relatedPerson } from '#libs/fhir/related-person';
import { versionsOf, type FhirType, type Told } from '#libs/fhir/resources';
import type { FhirDog, FhirPerson } from '#libs/fhir/source';
import type { Tx } from '#libs/platform/database/db';
import { DOG } from '#libs/register/dog-sql';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';
import { fhirOrders } from './fhir-order.js';
import { orderOf } from './find-order.js';
import { PEOPLE } from './people-sql.js';
import { mayRead, noteRead, type Reader } from './reader.js';

export const fhirBase = ({ publicUrl }: Pick<StepDeps, 'publicUrl'>): string => `${publicUrl}/fhir`;

/** One resource in every version, oldest first; never none. */
export function readVersions(deps: StepDeps, reader: Reader, type: FhirType, id: string): Promise<Told[]> {
  mayRead(reader, type);
  return deps.db.practice(reader.practice, async (tx) => {
    const versions = await versionsIn(tx, deps, reader, type, id);
    if (versions.length === 0) throw notFound();
    return versions;
  });
}

async function versionsIn(tx: Tx, deps: StepDeps, reader: Reader, type: FhirType, id: string): Promise<Told[]> {
  if (type === 'Patient') return dogs(tx, deps, reader, id);
  if (type === 'RelatedPerson') return people(tx, reader, { role: id });
  const order = await orderOf(tx, type, id);
  const read = order && (await fhirOrders(tx, [order], readingOf(deps, reader))).get(order);
  const versions = read ? versionsOf(read, type).filter((resource) => resource.id === id) : [];
  if (versions.length > 0) await noteRead(tx, reader, type, { orders: [order!] });
  return versions;
}

export const readingOf = (deps: StepDeps, reader: Reader) => ({ base: fhirBase(deps), now: deps.clock.now(), owners: reader.scopes.includes('owners') });

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

async function dogs(tx: Tx, deps: StepDeps, reader: Reader, id: string): Promise<Told[]> {
  if (!UUID.test(id)) return [];
  const [row] = await tx.$queryRawUnsafe<{ dog: FhirDog; kept: string | null }[]>(
    `SELECT ${DOG} - 'people' || jsonb_build_object('practiceName', (SELECT name FROM practice p WHERE p.id = d.practice_id)) AS dog, (SELECT m.kept_id FROM dog_merge m WHERE m.gone_id = d.id) AS kept FROM dog d WHERE d.id = $1::uuid`, id);
  if (!row) return [];
  await noteRead(tx, reader, 'Patient', { dogs: [id] });
  return [(row.kept ? replacedPatient(row.dog, row.kept, fhirBase(deps)) : patient(row.dog, fhirBase(deps))) as Told];
}

/** Somebody's one role, or all of a dog. */
export async function people(tx: Tx, reader: Reader, of: { role: string } | { dog: string }): Promise<Told[]> {
  const id = 'role' in of ? of.role : of.dog;
  if (!UUID.test(id)) return [];
  const [row] = await tx.$queryRawUnsafe<{ people: FhirPerson[] }[]>(`SELECT ${PEOPLE} AS people FROM dog d WHERE d.id = ${'role' in of ? '(SELECT dog_id FROM dog_role WHERE id = $1::uuid)' : '$1::uuid'}`, id);
  const found = (row?.people ?? []).filter((person) => 'dog' in of || person.id === id);
  if (found.length > 0) await noteRead(tx, reader, 'RelatedPerson', { dogs: found.map((person) => person.dog) });
  return found.map((person) => relatedPerson(person) as Told);
}
