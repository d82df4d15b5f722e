import { patient } from '#libs/fhir/patient';
import type { Told } from '#libs/fhir/resources';
import type { FhirDog } from '#libs/fhir/source';
import type { Tx } from '#libs/platform/database/db';
import { DOG } from '#libs/register/dog-sql';
import type { StepDeps } from '../record/step-deps.js';
import type { Asked } from './asked.js';
import { readCursor, writeCursor } from './cursor.js';
import type { Found } from './found.js';
import { fhirBase } from './read-resource.js';
import { noteRead, type Reader } from './reader.js';

const DOGS = `SELECT ${DOG} - 'people' || jsonb_build_object('practiceName', (SELECT name FROM practice p WHERE p.id = d.practice_id)) AS dog, d.created_at AS "createdAt" FROM dog d
  WHERE NOT EXISTS (SELECT 1 FROM dog_merge m WHERE m.gone_id = d.id) AND ($1::timestamptz IS NULL OR (d.created_at, d.id) > ($1::timestamptz, $2::uuid))
    AND ($3::text IS NULL OR d.animal_id = $3 OR EXISTS (SELECT 1 FROM dog_merge m WHERE m.kept_id = d.id AND m.animal_id = $3) OR EXISTS (SELECT 1 FROM dog_identifier i WHERE i.dog_id = d.id AND i.value = $3 AND i.value <> ''))
  ORDER BY d.created_at, d.id LIMIT $4`;

/** The dogs of the practice's register, and those that were referred to it. */
export async function searchDogs(tx: Tx, deps: StepDeps, reader: Reader, { identifier, after, count }: Asked): Promise<Found> {
  const from = after ? readCursor(after) : undefined;
  const rows = await tx.$queryRawUnsafe<{ dog: FhirDog; createdAt: Date }[]>(DOGS, from?.at ?? null, from?.id ?? null, identifier?.replace(/(?<=\d) (?=\d)/g, '') ?? null, count + 1);
  const page = rows.slice(0, count);
  await noteRead(tx, reader, 'Patient', { dogs: page.map(({ dog }) => dog.id) });
  const last = page.at(-1);
  return { resources: page.map(({ dog }) => patient(dog, fhirBase(deps)) as Told), next: rows.length > count && last ? writeCursor({ at: last.createdAt, id: last.dog.id }) : undefined };
}
