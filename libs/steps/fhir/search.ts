import type { Bundle } from '@medplum/fhirtypes';
import { searchBundle } from '#libs/fhir/bundle';
import { outcome } from '#libs/fhir/outcome';
import type { Told } from '#libs/fhir/resources';
import type { StepDeps } from '../record/step-deps.js';
import { badInput } from '../record/step-error.js';
import { inTime, type Asked } from './asked.js';
import type { Found } from './found.js';
import { fhirBase, people, readVersions } from './read-resource.js';
import { mayRead, type Reader } from './reader.js';
import { searchDogs } from './search-dogs.js';
import { searchOrders } from './search-orders.js';

/** One page of resources, oldest order or dog first, so that what is new comes at the end. */
export async function search(deps: StepDeps, reader: Reader, asked: Asked): Promise<Bundle> {
  mayRead(reader, asked.type);
  const { resources, next } = await find(deps, reader, asked);
  const address = (more: [string, string][]) => `${fhirBase(deps)}/${asked.type}${['', new URLSearchParams([...asked.used, ...more]).toString()].filter((part, i) => i === 0 || part).join('?')}`;
  return searchBundle({
    found: resources, self: address(asked.after ? [['after', asked.after]] : []), next: next && address([['after', next]]),
    ...(asked.ignored.length > 0 && { note: outcome('not-supported', `Not searched by ${asked.ignored.join(', ')}: these were left out of account, and more may be here than was meant.`, 'warning') }),
  }, fhirBase(deps));
}

async function find(deps: StepDeps, reader: Reader, asked: Asked): Promise<Found> {
  const { type, id, patient } = asked;
  if (id) return { resources: await one(deps, reader, asked) };
  if (type === 'Patient') return deps.db.practice(reader.practice, (tx) => searchDogs(tx, deps, reader, asked));
  if (type !== 'RelatedPerson') return deps.db.practice(reader.practice, (tx) => searchOrders(tx, deps, reader, { ...asked, type }));
  if (!patient) throw badInput('patient', 'Name the dog whose people are wanted: patient=Patient/…');
  return { resources: await deps.db.practice(reader.practice, (tx) => people(tx, reader, { dog: patient })) };
}

/** By its id; other parameters that it does not fit leave nothing. */
async function one(deps: StepDeps, reader: Reader, { type, id, patient, identifier, changed }: Asked): Promise<Told[]> {
  const found = await readVersions(deps, reader, type, id!).catch((error: unknown) => {
    if ((error as { code?: string }).code === 'NOT_FOUND') return [];
    throw error;
  });
  return found.slice(-1).filter((resource) => (!patient || JSON.stringify(resource).includes(`"Patient/${patient}"`)) && (!identifier || JSON.stringify(resource).includes(`"value":"${identifier}"`)) && inTime(resource, changed));
}
